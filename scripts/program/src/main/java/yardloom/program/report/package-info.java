/**
 * The report: all results of a plan as one page for a browser. Start with {@link
 * yardloom.program.report.HtmlReport}; what the page says stands in records here, how it is marked
 * up in the templates beside the style sheet.
 */
package yardloom.program.report;
