/**
 * What was measured day by day? Records of temperature and rain as users hand them in. Start with
 * {@link yardloom.climate.weather.WeatherWords}.
 */
package yardloom.climate.weather;
