/**
 * The contracts between plugins: records and {@link yardloom.kernel.fact.FactKey}s only. Start with
 * {@link yardloom.facts.YardFacts}.
 */
package yardloom.facts;
