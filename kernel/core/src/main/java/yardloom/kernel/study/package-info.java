/**
 * From a plan to its results: facts, findings, tables, layers and sheets. Start with {@link
 * yardloom.kernel.study.Study}.
 */
package yardloom.kernel.study;
