/**
 * Water: what plants need, what rain and roofs give, and dripline. Start with {@link
 * yardloom.water.WaterPlugin}.
 */
package yardloom.water;
