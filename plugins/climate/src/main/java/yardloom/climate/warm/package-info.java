/**
 * Where frost is no rule of the year: from when until when is it warm? Start at {@link
 * yardloom.climate.warm.WarmSeasonCalculator}.
 */
package yardloom.climate.warm;
