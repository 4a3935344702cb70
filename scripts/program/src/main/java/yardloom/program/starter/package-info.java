/**
 * Plans to begin with, as scripts with comments that teach. Start with {@link
 * yardloom.program.starter.Starter}.
 */
package yardloom.program.starter;
