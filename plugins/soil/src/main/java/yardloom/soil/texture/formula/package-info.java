/**
 * Texture classes, their tests by hand, and water by texture. Start with {@link
 * yardloom.soil.texture.formula.TextureRule}.
 */
package yardloom.soil.texture.formula;
