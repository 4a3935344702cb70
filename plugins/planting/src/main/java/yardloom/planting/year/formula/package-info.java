/**
 * Days on which the mean passes a limit. Start with {@link
 * yardloom.planting.year.formula.WarmMonths}.
 */
package yardloom.planting.year.formula;
