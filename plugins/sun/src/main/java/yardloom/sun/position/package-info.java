/**
 * Where does the sun stand, and when does it rise, culminate and set? Pure astronomy in radians,
 * degrees and instants. Start with {@link yardloom.sun.position.SolarPositions} for a moment,
 * {@link yardloom.sun.position.SunYear} for the 365 days of a usual year.
 */
package yardloom.sun.position;
