/**
 * What becomes of a season's prunings and weeds. Start with {@link
 * yardloom.soil.compost.HeapCalculator}.
 */
package yardloom.soil.compost;
