/**
 * Climates and roof shares read from CSV, each with its source. Start with {@link
 * yardloom.water.data.ClimateCatalogue}.
 */
package yardloom.water.data;
