/**
 * How much cardboard, compost and chips lie in place, and what to order. Start with {@link
 * yardloom.materials.takeoff.BillCalculator}.
 */
package yardloom.materials.takeoff;
