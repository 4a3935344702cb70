/**
 * How much of the need does a tank of this size meet, and how much runs over? Start with {@link
 * yardloom.water.tank.TankTable}; {@link yardloom.water.tank.TankSteps} says what flows in and out.
 */
package yardloom.water.tank;
