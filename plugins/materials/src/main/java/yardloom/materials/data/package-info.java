/**
 * The plugin's tables: CSV resources in which every row names its source. Start with {@link
 * yardloom.kernel.table.DataTable}.
 */
package yardloom.materials.data;
