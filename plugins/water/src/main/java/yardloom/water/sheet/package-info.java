/**
 * How water looks on the sheet and in tables. Start with {@link yardloom.water.sheet.MonthTable}.
 */
package yardloom.water.sheet;
