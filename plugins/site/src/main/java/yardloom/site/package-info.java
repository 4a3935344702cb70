/**
 * What stands and lies on the lot, and where things may lie: words, rules, tables and drawings of
 * the yard itself. Start with {@link yardloom.site.SitePlugin}.
 */
package yardloom.site;
