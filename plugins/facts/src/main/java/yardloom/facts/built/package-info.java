/**
 * How what is built is made, as the site's words say it and the materials count it. Start with
 * {@link yardloom.facts.built.Barrier}.
 */
package yardloom.facts.built;
