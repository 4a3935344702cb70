/** Trees and the ground that their roots need. Start with {@link yardloom.site.tree.TreeWords}. */
package yardloom.site.tree;
