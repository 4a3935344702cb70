/**
 * Runs plan scripts. Start with {@link yardloom.language.run.PlanRunner}.
 *
 * <p>What is promised, and no more: A plan script cannot name network, processes or Java classes,
 * nor files other than scripts and plain data below its own folder; it is refused before it runs.
 * It may still use up its time and memory limits. Plugins are programs: install only those you
 * trust.
 *
 * <p>A script is compiled by {@link yardloom.language.compile} to a class that calls the words of
 * the loaded plugins and the few classes of the host ({@code value.Operators}, {@code
 * value.Values}, {@code value.NumberUnits}, {@code Guard}, {@code Builtins}), and runs on a watched
 * thread.
 */
package yardloom.language.run;
