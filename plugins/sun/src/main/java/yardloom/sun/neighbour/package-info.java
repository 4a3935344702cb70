/**
 * How much sun would something new take from beds and from neighbours? Start with {@link
 * yardloom.sun.neighbour.LostSunCalculator}.
 */
package yardloom.sun.neighbour;
