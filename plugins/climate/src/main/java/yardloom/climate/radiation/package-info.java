/**
 * How much sunlight reaches level open ground, above the air, under a clear sky and as measured?
 * Start with {@link yardloom.climate.radiation.RadiationCalculator}.
 */
package yardloom.climate.radiation;
