/**
 * Beds: where they fit and whether a gardener reaches into them. Start with {@link
 * yardloom.site.bed.BedWords}.
 */
package yardloom.site.bed;
