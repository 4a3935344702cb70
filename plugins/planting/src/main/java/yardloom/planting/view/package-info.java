/**
 * How does the planting look in its first year, and from the side? Start with {@link
 * yardloom.planting.view.YoungView}.
 */
package yardloom.planting.view;
