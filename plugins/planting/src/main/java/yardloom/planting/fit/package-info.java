/**
 * Does each plant suit its place: room, neighbours, family, winter? Start with {@link
 * yardloom.planting.fit.PlantingChecks}.
 */
package yardloom.planting.fit;
