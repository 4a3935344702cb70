/**
 * How boards are sawn from few or short stock. Start with {@link
 * yardloom.materials.cutting.CuttingStock}.
 */
package yardloom.materials.cutting;
