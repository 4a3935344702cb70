/**
 * Tables, layers, cautions and sheets of the materials plugin. Start with {@link
 * yardloom.materials.sheet.TakeOffTable}.
 */
package yardloom.materials.sheet;
