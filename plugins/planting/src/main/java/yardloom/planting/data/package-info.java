/**
 * The catalogue's files, and what reads them. Start with {@link yardloom.planting.data.CsvRows}.
 */
package yardloom.planting.data;
