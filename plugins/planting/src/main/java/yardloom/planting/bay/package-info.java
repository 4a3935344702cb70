/**
 * Where do weeds and prunings rot down, and what is that place built of? Start with {@link
 * yardloom.planting.bay.BayCalculator}.
 */
package yardloom.planting.bay;
