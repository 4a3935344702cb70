/**
 * Why a printed number is what it is: found by table, row and column, by its number in the
 * appendix, or by words, and told with formula, values, script lines and sources. Start with {@link
 * yardloom.program.explain.Explanation}.
 */
package yardloom.program.explain;
