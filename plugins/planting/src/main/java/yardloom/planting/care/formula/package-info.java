/** Seasons by frost, and time spread over months. Start with {@link Season}. */
package yardloom.planting.care.formula;
