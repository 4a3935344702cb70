/**
 * How many truckloads an order is, and what it weighs. Start with {@link
 * yardloom.materials.load.LoadCalculator}.
 */
package yardloom.materials.load;
