/**
 * Boards, edging, pavers, posts and wire: how many. Start with {@link
 * yardloom.materials.goods.HardGoodsCalculator}.
 */
package yardloom.materials.goods;
