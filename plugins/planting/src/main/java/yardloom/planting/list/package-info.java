/**
 * Which plants are wanted, how many, and where do they go? Start with {@link
 * yardloom.planting.list.PlantTable}.
 */
package yardloom.planting.list;
