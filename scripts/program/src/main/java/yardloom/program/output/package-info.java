/**
 * From an outcome to files on disk: sheets, tables, results and findings, whole or not at all.
 * Start with {@link yardloom.program.output.PlanWriter}.
 */
package yardloom.program.output;
