/**
 * Which pieces frames, trellises and paved places take. Start with {@link
 * yardloom.materials.goods.formula.FramePieces}.
 */
package yardloom.materials.goods.formula;
