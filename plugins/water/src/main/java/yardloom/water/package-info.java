/**
 * Water: from what plants need and roofs give to tanks, dripline, zones and watering times. One
 * package for each question; here the plugin, its sheet, and the check of what the figures lack.
 * Start with {@link yardloom.water.WaterPlugin}.
 */
package yardloom.water;
