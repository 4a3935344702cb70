/**
 * Radiation above the air and at the ground after FAO-56. Start with {@link
 * yardloom.climate.radiation.formula.SolarDay}.
 */
package yardloom.climate.radiation.formula;
