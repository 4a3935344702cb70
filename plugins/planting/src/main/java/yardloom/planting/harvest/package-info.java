/**
 * What do the beds bring in a year at full bearing, and when the first time? Start with {@link
 * yardloom.planting.harvest.HarvestCalculator}.
 */
package yardloom.planting.harvest;
