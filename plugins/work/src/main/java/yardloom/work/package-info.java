/** Who does what, when, and for how much. Start with {@link yardloom.work.WorkPlugin}. */
package yardloom.work;
