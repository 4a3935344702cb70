package yardloom.facts;

import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * A tree that is kept flat along wires or a wall; said by planting, drawn by the site.
 *
 * @param width along its wires
 * @param depth from front to back
 * @param bearing of its wires, clockwise from north
 */
public record FlatCrown(Length width, Length depth, Angle bearing) {
  /** On a tree. */
  public static final AttributeKey<FlatCrown> KEY =
      new AttributeKey<>("planting.flat-crown", FlatCrown.class);

  /** The ground below it, about its stem. */
  public Shape about(Point stem) {
    double sin = StrictMath.sin(bearing.radians());
    double cos = StrictMath.cos(bearing.radians());
    return Shape.polygon(
        List.of(
            corner(stem, sin, cos, 1, 1),
            corner(stem, sin, cos, 1, -1),
            corner(stem, sin, cos, -1, -1),
            corner(stem, sin, cos, -1, 1)));
  }

  private Point corner(Point stem, double sin, double cos, int along, int across) {
    double w = along * width.metres() / 2;
    double d = across * depth.metres() / 2;
    return stem.moved(Length.metres(w * sin + d * cos), Length.metres(w * cos - d * sin));
  }
}
