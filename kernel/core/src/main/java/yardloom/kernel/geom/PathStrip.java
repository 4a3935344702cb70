package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * The ground under a line with a width, as for paths, walls and beds along a fence.
 *
 * <p>Ends are cut flat. Corners are mitred up to {@value #MITRE_LIMIT} half widths and rounded
 * beyond, so that no point is further from the line than that. A line that ends where it starts is
 * a loop: its first corner is joined like the others, and a loop narrower than its own width has no
 * hole. The strip is put together from one rectangle per segment and one wedge per corner; {@code
 * BufferOp} on a closed line was seen to leave a hole that is not there (JTS issue 876).
 */
public final class PathStrip {
  static final double MITRE_LIMIT = 2;
  private static final double STRAIGHT_M = 1e-7;

  private PathStrip() {}

  /**
   * The strip of {@code width} centred on the line.
   *
   * @throws PlanException (OUT_OF_RANGE) if the width is not positive
   */
  public static Shape centred(Line line, Length width) {
    double halfM = requirePositive(width).metres() / 2;
    List<Geometry> pieces = new ArrayList<>();
    pieces.addAll(oneSide(line, halfM));
    pieces.addAll(oneSide(line, -halfM));
    return new Shape(Overlay.unionAll(pieces));
  }

  /**
   * The strip of {@code depth} on the left of the line's direction, {@code gap} away from it.
   *
   * <p>Where the line bends towards the strip, nothing of it crosses to the line's right.
   *
   * @throws PlanException (OUT_OF_RANGE) if the depth is not positive or the gap is negative
   */
  public static Shape leftOf(Line line, Length gap, Length depth) {
    if (gap.metres() < 0) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a gap cannot be negative, got " + gap);
    }
    double outerM = gap.plus(requirePositive(depth)).metres();
    Geometry strip = Overlay.unionAll(oneSide(line, outerM));
    Geometry cut = Overlay.unionAll(oneSide(line, -outerM));
    strip = Overlay.difference(strip, cut);
    return gap.metres() == 0
        ? new Shape(strip)
        : new Shape(Overlay.difference(strip, centred(line, gap.times(2)).jts()));
  }

  private static Length requirePositive(Length width) {
    if (width.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a strip needs a positive width, got " + width);
    }
    return width;
  }

  /** Rectangles and corner wedges on the left ({@code reachM} positive) or right of the line. */
  private static List<Geometry> oneSide(Line line, double reachM) {
    Coordinate[] c = line.jts().getCoordinates();
    List<Geometry> pieces = new ArrayList<>();
    for (int i = 0; i + 1 < c.length; i++) {
      pieces.add(Quads.of(c[i], c[i + 1], left(c, i + 1, i, reachM), left(c, i, i, reachM)));
    }
    for (int i = 1; i + 1 < c.length; i++) {
      wedge(c[i - 1], c[i], c[i + 1], reachM, pieces);
    }
    if (line.isClosed()) {
      wedge(c[c.length - 2], c[0], c[1], reachM, pieces);
    }
    return pieces;
  }

  private static Coordinate left(Coordinate[] c, int corner, int segment, double reachM) {
    return Quads.left(c[corner], c[segment], c[segment + 1], reachM);
  }

  private static void wedge(
      Coordinate before, Coordinate at, Coordinate after, double reachM, List<Geometry> pieces) {
    Coordinate first = Quads.left(at, before, at, reachM);
    Coordinate second = Quads.left(at, at, after, reachM);
    double cross = (at.x - before.x) * (after.y - at.y) - (at.y - before.y) * (after.x - at.x);
    boolean inside = cross * reachM >= 0 && !Quads.turnsBack(before, at, after);
    if (inside || first.distance(second) < STRAIGHT_M) {
      return;
    }
    Quads.mitre(at, first, second, MITRE_LIMIT)
        .ifPresentOrElse(
            tip -> pieces.add(Quads.of(at, first, tip, second)),
            () -> pieces.add(Around.fan(before, at, after, Math.abs(reachM))));
  }
}
