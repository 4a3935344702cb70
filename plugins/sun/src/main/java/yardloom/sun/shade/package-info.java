/**
 * What of the sky do these solids hide from an eye, hour angle by hour angle? Pure geometry, metres
 * and radians as plain numbers. Start with {@link yardloom.sun.shade.ShadeScene}; {@link
 * yardloom.sun.shade.ColumnProfile} is its heart.
 */
package yardloom.sun.shade;
