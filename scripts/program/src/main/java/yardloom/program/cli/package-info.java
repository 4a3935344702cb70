/**
 * The command line: the only place that prints, reads the clock or ends the process. Start with
 * {@link yardloom.program.cli.Main}.
 */
package yardloom.program.cli;
