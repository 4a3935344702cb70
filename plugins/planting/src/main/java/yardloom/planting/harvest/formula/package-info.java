/**
 * Yield by area and what crowding leaves of it. Start with {@link
 * yardloom.planting.harvest.formula.AreaYield}.
 */
package yardloom.planting.harvest.formula;
