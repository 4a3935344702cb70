/** Which way barrows go, and how often. Start with {@link yardloom.work.haul.HaulCalculator}. */
package yardloom.work.haul;
