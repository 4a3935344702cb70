/**
 * What does each roof shed into its gutter, month by month? Start with {@link
 * yardloom.water.roof.RoofCalculator}.
 */
package yardloom.water.roof;
