/**
 * The yard as data: a mutable draft while a script runs, an immutable plan afterwards. Start with
 * {@link yardloom.kernel.plan.Plan}.
 */
package yardloom.kernel.plan;
