/**
 * Where is the sunniest free ground of some size? Start with {@link
 * yardloom.sun.spot.SpotCalculator}.
 */
package yardloom.sun.spot;
