/**
 * How much a script may use up, and the clock and counters that see to it. Start with {@link
 * yardloom.language.limit.RunLimits}; {@code Meter} counts the steps and memory of one run, {@code
 * Watch} the time of the thread it runs on.
 */
package yardloom.language.limit;
