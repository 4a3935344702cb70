/**
 * What texture the soil has and how much water it holds and takes in. Start with {@link
 * yardloom.soil.texture.SoilCalculator}.
 */
package yardloom.soil.texture;
