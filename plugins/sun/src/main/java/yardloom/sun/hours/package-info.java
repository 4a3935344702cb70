/**
 * How many hours of direct sun does a place get, on a day, in a month, over a season? Start with
 * {@link yardloom.sun.hours.SunEngine}.
 */
package yardloom.sun.hours;
