/**
 * From when until when does a garden grow here, with frost or without? Start at {@link
 * yardloom.planting.year.GrowingYear}.
 */
package yardloom.planting.year;
