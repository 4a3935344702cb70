/**
 * What is built on the lot: buildings, fences, paving, taps, buried lines. Start with {@link
 * yardloom.site.built.BuiltWords}.
 */
package yardloom.site.built;
