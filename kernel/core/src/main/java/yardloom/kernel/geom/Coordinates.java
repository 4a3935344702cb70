package yardloom.kernel.geom;

import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;

/** Coordinates in words, for messages. */
final class Coordinates {
  private Coordinates() {}

  static String describe(Coordinate c) {
    // Beyond what a plan can hold hundreds of digits would follow.
    String form = Math.max(Math.abs(c.x), Math.abs(c.y)) < 1e9 ? "%.2f" : "%.3g";
    return String.format(
        Locale.ROOT,
        "(F m, F m) = (F ft, F ft)".replace("F", form),
        c.x,
        c.y,
        c.x / 0.3048,
        c.y / 0.3048);
  }
}
