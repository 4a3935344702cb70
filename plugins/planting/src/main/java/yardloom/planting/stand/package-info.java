/**
 * What stands in each bed, and how much water does it draw from month to month, as a multiple of
 * reference evapotranspiration? Start with {@link yardloom.planting.stand.StandCalculator}.
 */
package yardloom.planting.stand;
