/**
 * What lawn is left beside beds, and where mulch meets it? Start with {@link
 * yardloom.site.lawn.LawnStrip}.
 */
package yardloom.site.lawn;
