/**
 * How deep may chips lie on the plants of a bed? Start with {@link
 * yardloom.planting.mulch.BorneDepthCalculator}.
 */
package yardloom.planting.mulch;
