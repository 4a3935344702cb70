/**
 * What a regional file says: where it holds, and rates that go before the shipped ones. Start with
 * {@link yardloom.facts.region.Region}.
 */
package yardloom.facts.region;
