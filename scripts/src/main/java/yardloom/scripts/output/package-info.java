/**
 * From an outcome to files on disk: sheets, tables, results and findings, whole or not at all.
 * Start with {@link yardloom.scripts.output.PlanWriter}.
 */
package yardloom.scripts.output;
