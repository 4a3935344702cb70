/**
 * What was changed since the plan was issued, and which state the sheets show. Start with {@link
 * yardloom.site.revision.RevisionWords}.
 */
package yardloom.site.revision;
