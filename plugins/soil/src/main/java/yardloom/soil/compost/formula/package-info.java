/**
 * Mixes, bays and losses of a compost heap. Start with {@link
 * yardloom.soil.compost.formula.CompostMix}.
 */
package yardloom.soil.compost.formula;
