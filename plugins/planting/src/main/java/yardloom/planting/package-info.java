/**
 * Planting: what stands where, how many, what it shades and asks for. Start with {@link
 * yardloom.planting.PlantingPlugin}.
 */
package yardloom.planting;
