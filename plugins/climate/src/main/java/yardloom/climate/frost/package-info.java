/**
 * When is frost usual, how cold does a winter get, and how much chill and warmth does a year bring?
 * As the plan states it or from a weather record. Start with {@link
 * yardloom.climate.frost.ColdCalculator}.
 */
package yardloom.climate.frost;
