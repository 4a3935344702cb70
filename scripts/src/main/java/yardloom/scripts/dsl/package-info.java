/**
 * Runs plan scripts. Start with {@link yardloom.scripts.dsl.PlanRunner}.
 *
 * <p>What is promised, and no more: A plan script cannot name network, processes or Java classes,
 * nor files other than scripts and plain data below its own folder; it is refused before it runs.
 * It may still use up its time and memory limits. Plugins are programs: install only those you
 * trust.
 *
 * <p>A script is compiled by {@link yardloom.scripts.check} to a class that calls the words of the
 * loaded plugins and the few host classes of this package ({@code Operators}, {@code Values},
 * {@code NumberUnits}, {@code Guard}, {@code Builtins}), and runs on a watched thread.
 */
package yardloom.scripts.dsl;
