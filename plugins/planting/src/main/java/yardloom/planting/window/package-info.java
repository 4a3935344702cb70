/** When is each kind planted here? Start with {@link yardloom.planting.window.WindowCalculator}. */
package yardloom.planting.window;
