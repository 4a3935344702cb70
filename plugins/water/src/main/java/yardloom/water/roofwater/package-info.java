/**
 * How is the water of the roofs shown: the layer with tanks, downspouts, overflows and basins, the
 * curve of what tanks bring, and the sheet. Start with {@link
 * yardloom.water.roofwater.RoofWaterSheet}.
 */
package yardloom.water.roofwater;
