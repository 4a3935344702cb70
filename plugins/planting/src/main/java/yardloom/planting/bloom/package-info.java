/**
 * When the yard blooms: for bees, for pollination and for the eye. Start with {@link
 * yardloom.planting.bloom.BloomTable}.
 */
package yardloom.planting.bloom;
