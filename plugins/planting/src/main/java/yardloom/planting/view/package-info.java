/**
 * How does the planting look in its first year, and from the side? Start with {@link
 * yardloom.planting.view.FirstYearView}.
 */
package yardloom.planting.view;
