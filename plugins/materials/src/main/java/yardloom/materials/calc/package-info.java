/**
 * Pure functions, one published method each, with its source. Public boundaries take unit types;
 * plain doubles carry the unit in their name. Start with {@link
 * yardloom.materials.calc.SurfaceLayout}, which turns a plan into surfaces.
 */
package yardloom.materials.calc;
