/**
 * Which plants grow so tall that they shade others? Start with {@link
 * yardloom.planting.canopy.CanopyCalculator}.
 */
package yardloom.planting.canopy;
