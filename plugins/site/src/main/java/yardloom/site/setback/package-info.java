/**
 * Where something may not lie: setbacks, sight triangles, easements, keep-outs, drain fields. Start
 * with {@link yardloom.site.setback.SetbackRules}.
 */
package yardloom.site.setback;
