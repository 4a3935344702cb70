/** Rules held against a plan and its facts. Start with {@link yardloom.kernel.check.Check}. */
package yardloom.kernel.check;
