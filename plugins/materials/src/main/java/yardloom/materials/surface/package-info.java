/**
 * Which ground receives which layers, each square foot once. Start with {@link
 * yardloom.materials.surface.SurfaceLayout}.
 */
package yardloom.materials.surface;
