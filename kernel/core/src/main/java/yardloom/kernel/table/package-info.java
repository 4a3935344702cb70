/**
 * Tables without units of display: cells keep exact derived quantities, columns say how to show
 * them. Start with {@link yardloom.kernel.table.Table}.
 */
package yardloom.kernel.table;
