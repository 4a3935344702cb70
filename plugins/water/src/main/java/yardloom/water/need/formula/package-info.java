/**
 * Net need, the part of the rain that roots can use, landscape water budgets, watering of a new
 * tree. Unit types at the boundary. Start with {@link yardloom.water.need.formula.NetNeed}.
 */
package yardloom.water.need.formula;
