/**
 * The rewritten script between the passes: {@link yardloom.language.tree.Tree} makes its nodes,
 * {@code Planned} notes at a node what the typed pass has to decide there.
 */
package yardloom.language.tree;
