/**
 * What is known of each plant and crop, and from where? Start with {@link
 * yardloom.planting.catalogue.PlantCatalogue}; rows stand in CSV files, each with its source.
 */
package yardloom.planting.catalogue;
