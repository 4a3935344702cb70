/**
 * The phases of the work and the pages of the crew, and the ways of the barrows. Start with {@link
 * yardloom.facts.work.WorkPhase}.
 */
package yardloom.facts.work;
