/**
 * Where names stand on a drawing without covering each other. Start with {@link
 * yardloom.sheet.label.LabelPlacer}.
 */
package yardloom.sheet.label;
