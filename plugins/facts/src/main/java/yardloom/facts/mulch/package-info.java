/**
 * What lies on which ground and how it comes to the yard, as soil and work read it. Start with
 * {@link yardloom.facts.mulch.MulchSurface}.
 */
package yardloom.facts.mulch;
