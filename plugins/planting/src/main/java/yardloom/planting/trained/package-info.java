/**
 * Trees kept flat or narrow by training: what form, how wide, and what does one bear? Start with
 * {@link yardloom.planting.trained.Trained}.
 */
package yardloom.planting.trained;
