/**
 * How dry does the soil under each plant get through measured days, with watering and without?
 * Start with {@link yardloom.water.soilwater.SoilDays}.
 */
package yardloom.water.soilwater;
