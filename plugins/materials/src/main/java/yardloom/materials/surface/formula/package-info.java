/**
 * How many sheets cover a shape, and what a layer with tapered edges holds. Start with {@link
 * yardloom.materials.surface.formula.Cardboard}.
 */
package yardloom.materials.surface.formula;
