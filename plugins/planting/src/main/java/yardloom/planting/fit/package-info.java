/**
 * Does each plant suit its place: room, neighbours, family, light, winter? Start with {@link
 * yardloom.planting.fit.PlantingChecks}.
 */
package yardloom.planting.fit;
