/**
 * How plants look on the sheet and in tables. Start with {@link
 * yardloom.planting.sheet.PlantPainter}.
 */
package yardloom.planting.sheet;
