/**
 * Paths: how wide, with room to turn and to pass. Start with {@link yardloom.site.path.PathRules}.
 */
package yardloom.site.path;
