/**
 * What the yard may cost, and what makes that uncertain. Start with {@link
 * yardloom.work.cost.CostCalculator}.
 */
package yardloom.work.cost;
