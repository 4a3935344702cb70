/**
 * Doses by soil test: acidity, nitrogen, organic matter. Start with {@link
 * yardloom.soil.amendment.formula.PhAmendment}.
 */
package yardloom.soil.amendment.formula;
