/**
 * The shipped plant catalogue, read from CSV; inches in the file, unit types in the records. Start
 * with {@link yardloom.planting.data.PlantCatalogue}.
 */
package yardloom.planting.data;
