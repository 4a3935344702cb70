/**
 * Does the garden take more or less water than the lawn that it replaces? Start with {@link
 * yardloom.water.lawn.LawnCalculator}.
 */
package yardloom.water.lawn;
