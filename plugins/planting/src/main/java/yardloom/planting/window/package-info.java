/**
 * When may each kind of plant be planted, and as what? Start with {@link
 * yardloom.planting.window.WindowCalculator}.
 */
package yardloom.planting.window;
