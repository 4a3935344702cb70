/**
 * The kernel's own checks and tables of the site: what lies where, what may be built where, and why
 * not elsewhere. Lengths and areas of the plan in its own units appear in the texts; facts stay in
 * metres. Start with {@link yardloom.kernel.rules.KernelRules} and {@link
 * yardloom.kernel.rules.KernelTables}.
 */
package yardloom.kernel.rules;
