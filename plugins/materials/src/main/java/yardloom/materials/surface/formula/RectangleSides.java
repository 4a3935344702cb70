package yardloom.materials.surface.formula;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * The sides of an outline that is a rectangle, upright or turned; the longer one first.
 *
 * <p>An outline counts as a rectangle if it has four corners and its diagonals are equal and halve
 * each other, to a millimetre. Anything else, holes included, has no sides.
 *
 * <p>References: Euclid, Elements, book I.
 */
public record RectangleSides(Length length, Length width) {
  private static final double TOLERANCE_M = 1e-3;

  public static Optional<RectangleSides> of(Shape shape) {
    Coordinate[] c = shape.jts().getCoordinates();
    if (shape.polygons().size() != 1 || c.length != 5) {
      return Optional.empty();
    }
    boolean halved =
        Math.hypot(c[0].x + c[2].x - c[1].x - c[3].x, c[0].y + c[2].y - c[1].y - c[3].y)
            < 2 * TOLERANCE_M;
    boolean equal = Math.abs(c[0].distance(c[2]) - c[1].distance(c[3])) < TOLERANCE_M;
    if (!halved || !equal) {
      return Optional.empty();
    }
    Length a = Length.metres(c[0].distance(c[1]));
    Length b = Length.metres(c[1].distance(c[2]));
    return Optional.of(new RectangleSides(a.max(b), a.min(b)));
  }
}
