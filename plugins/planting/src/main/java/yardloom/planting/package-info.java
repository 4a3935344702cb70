/**
 * Planting: what stands where, how many, what it shades, asks for and brings. One package for each
 * question; here the plugin and its sheet. Start with {@link yardloom.planting.PlantingPlugin}.
 */
package yardloom.planting;
