/**
 * What a run gave, kept for the next run over a plan that is almost the same. Start with {@link
 * yardloom.kernel.recall.Recall}; {@code Likeness} tells whether two answers are the same, {@code
 * Relocation} sets the script places of an earlier result anew.
 */
package yardloom.kernel.recall;
