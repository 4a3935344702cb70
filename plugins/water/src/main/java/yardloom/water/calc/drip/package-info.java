/**
 * Dripline in beds: where it lies, how evenly and for how long it waters. Start with {@link
 * yardloom.water.calc.drip.DripLayout}.
 */
package yardloom.water.calc.drip;
