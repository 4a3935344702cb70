/**
 * Plugins from outside the program: jars in folders, each in a class loader of its own, and what
 * happens when one breaks. Start with {@link yardloom.program.plugin.PluginJars}.
 */
package yardloom.program.plugin;
