package yardloom.sun.position;

/**
 * A place on the sky in degrees.
 *
 * @param azimuthDeg clockwise from true north, 0 to 360
 * @param elevationDeg above the level horizon
 */
public record SunPosition(double azimuthDeg, double elevationDeg) {}
