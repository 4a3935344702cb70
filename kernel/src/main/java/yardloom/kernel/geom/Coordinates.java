package yardloom.kernel.geom;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/** Coordinates in words, for messages. */
final class Coordinates {
  private Coordinates() {}

  static String describe(Coordinate c) {
    return String.format(
        Locale.ROOT, "(%.2f m, %.2f m) = (%.2f ft, %.2f ft)", c.x, c.y, c.x / 0.3048, c.y / 0.3048);
  }
}
