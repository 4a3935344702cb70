/**
 * Where materials come from and how long ahead to ask. Start with {@link
 * yardloom.materials.sourcing.SupplyCalculator}.
 */
package yardloom.materials.sourcing;
