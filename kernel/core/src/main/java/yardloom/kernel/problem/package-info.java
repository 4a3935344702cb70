/**
 * What is wrong with a plan, its data or a call, and where. Start with {@link
 * yardloom.kernel.problem.Problem}.
 */
package yardloom.kernel.problem;
