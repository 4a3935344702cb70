/**
 * How deep chips may lie, and how they settle. Start with {@link
 * yardloom.materials.mulch.formula.MulchLimits}.
 */
package yardloom.materials.mulch.formula;
