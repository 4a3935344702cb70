/**
 * Parts of what is built, free of plan and facts. Start with {@link
 * yardloom.materials.built.formula.FenceParts}.
 */
package yardloom.materials.built.formula;
