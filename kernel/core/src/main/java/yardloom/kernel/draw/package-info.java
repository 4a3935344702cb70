/**
 * Drawings as neutral marks in metres, and their composition into sheets in paper millimetres.
 * Start with {@link yardloom.kernel.draw.Painter} and {@link yardloom.kernel.draw.SheetPlan}.
 */
package yardloom.kernel.draw;
