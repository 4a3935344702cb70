/**
 * Which beds share a valve, so that the tap can feed them at once, and does the ground take what
 * they give? Start with {@link yardloom.water.zone.ZoneCalculator}.
 */
package yardloom.water.zone;
