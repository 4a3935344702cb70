/**
 * Facts, the calculators that give them, and the graph that runs each calculator once. Start with
 * {@link yardloom.kernel.fact.Calculator}.
 */
package yardloom.kernel.fact;
