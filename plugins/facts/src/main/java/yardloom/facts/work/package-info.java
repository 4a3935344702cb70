/**
 * The phases of the work, what is to be done in them, and the pages of the crew. Start with {@link
 * yardloom.facts.work.WorkPhase}.
 */
package yardloom.facts.work;
