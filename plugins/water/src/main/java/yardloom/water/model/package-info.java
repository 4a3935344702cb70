/**
 * What water knows and passes between its own calculators. Unit types throughout. Start with {@link
 * yardloom.water.model.WaterKeys}.
 */
package yardloom.water.model;
