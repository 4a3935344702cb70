/**
 * What plants need: crop need, landscape budgets, water held by soil. Start with {@link
 * yardloom.water.calc.demand.NetNeed}.
 */
package yardloom.water.calc.demand;
