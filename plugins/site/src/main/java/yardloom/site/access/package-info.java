/**
 * The ways from gates and heaps to the beds. Start with {@link
 * yardloom.site.access.WaysCalculator}.
 */
package yardloom.site.access;
