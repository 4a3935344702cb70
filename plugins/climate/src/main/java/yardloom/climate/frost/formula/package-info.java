/**
 * Freeze dates, hardiness zones, chill and degree days of years of daily extremes. Start with
 * {@link yardloom.climate.frost.formula.WeatherYears}.
 */
package yardloom.climate.frost.formula;
