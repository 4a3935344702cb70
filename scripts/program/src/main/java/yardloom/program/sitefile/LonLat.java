package yardloom.program.sitefile;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/**
 * A place on earth (WGS 84), in the axis order of RFC 7946: longitude, then latitude.
 *
 * @param lonDeg east positive, -180 to 180
 * @param latDeg north positive, -90 to 90
 */
public record LonLat(double lonDeg, double latDeg) {
  /**
   * Checks the ranges.
   *
   * @throws PlanException (OUT_OF_RANGE) without a place
   */
  public LonLat {
    // Written so that NaN fails too.
    if (!(Math.abs(lonDeg) <= 180 && Math.abs(latDeg) <= 90)) {
      boolean swapped = Math.abs(lonDeg) <= 90 && Math.abs(latDeg) <= 180;
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "longitude "
              + lonDeg
              + ", latitude "
              + latDeg
              + " is no place on earth: longitude lies between -180 and 180 degrees, latitude between"
              + " -90 and 90; "
              + (swapped
                  ? "the two seem to be swapped, GeoJSON gives longitude first"
                  : "a plan in feet or metres is no GeoJSON, give it to `wktOutline`"));
    }
  }
}
