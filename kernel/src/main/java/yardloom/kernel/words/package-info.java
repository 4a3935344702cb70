/**
 * The kernel's own words of the plan language and the blocks that plugins extend. Start with {@link
 * yardloom.kernel.words.PlanScope}.
 */
package yardloom.kernel.words;
