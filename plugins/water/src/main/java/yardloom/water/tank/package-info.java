/**
 * How much of the need does a tank of this size meet, and how much runs over? Start with {@link
 * yardloom.water.tank.TankCalculator}; {@link yardloom.water.tank.TankYears} runs the days.
 */
package yardloom.water.tank;
