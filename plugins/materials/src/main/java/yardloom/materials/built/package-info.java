/**
 * What fences, walls, steps, paving and sheds are built of, and what is done for them. Start with
 * {@link yardloom.materials.built.BuiltCalculator}.
 */
package yardloom.materials.built;
