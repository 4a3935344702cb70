/**
 * Roof shares and curve numbers read from CSV, each with its source. Start with {@link
 * yardloom.water.data.RoofShares}.
 */
package yardloom.water.data;
