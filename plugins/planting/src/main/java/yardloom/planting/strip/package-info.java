/**
 * Days of the year as bars in rows under the months. Start at {@link
 * yardloom.planting.strip.MonthStrip}.
 */
package yardloom.planting.strip;
