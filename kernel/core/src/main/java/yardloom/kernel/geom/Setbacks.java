package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;

/**
 * The part of a lot that keeps its own distance from each side.
 *
 * <p>Next to a side of distance d nothing is left within d of it, as the crow flies. Between two
 * sides the setback lines run on parallel to the lot lines until they meet, but no further than
 * {@value #LIMIT} distances from the corner; at a reflex corner with unequal distances the larger
 * one turns round the corner. Sides that are arcs give concentric arcs, to the sagitta of their
 * chords. Any simple outline is accepted; what is left may be empty or in several parts.
 *
 * <p>Built by subtracting all ground within the distance of each side and one wedge per corner: a
 * single buffer of the lot has only one distance.
 *
 * <p>References: [1] San Mateo, California, Municipal Code 27.04.085: a building setback line is
 * parallel to the property line.
 */
public final class Setbacks {
  static final double LIMIT = 2;

  private static final Length TOLERANCE = Length.millimetres(1);

  /**
   * One side of the lot.
   *
   * @param line its corners, counter-clockwise around the lot; for an arc, the chords
   * @param arc the true form of a curved side
   * @param distance how far to keep away, zero or more
   */
  public record Side(String name, Line line, Optional<Arc> arc, Length distance) {
    public Side {
      if (distance.metres() < 0) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE, "a setback cannot be negative, got " + distance);
      }
    }
  }

  /** The ground that one side takes; the ground of an earlier side is not counted again. */
  public record Taken(Side side, Shape ground) {}

  private Setbacks() {}

  /**
   * What the setbacks leave of the lot; empty or in several parts.
   *
   * @param sides all sides in order, counter-clockwise, each starting where the one before ends
   * @throws PlanException (INTERNAL) if the result breaks a postcondition; the message holds the
   *     outline for a report
   */
  public static Shape buildable(Shape lot, List<Side> sides) {
    List<Geometry> all = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      all.addAll(pieces(sides, i));
    }
    if (all.isEmpty()) {
      return lot;
    }
    Shape free = new Shape(Overlay.difference(lot.jts(), Overlay.unionAll(all)));
    check(lot, sides, free);
    return free;
  }

  /** What each side with a distance takes, in the order of the sides. */
  public static List<Taken> taken(Shape lot, List<Side> sides) {
    List<Side> taking = new ArrayList<>();
    List<Shape> strips = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      List<Geometry> pieces = pieces(sides, i);
      if (!pieces.isEmpty()) {
        taking.add(sides.get(i));
        strips.add(new Shape(Overlay.unionAll(pieces)));
      }
    }
    Nearby nearby = new Nearby(strips);
    List<Taken> taken = new ArrayList<>();
    for (int i = 0; i < strips.size(); i++) {
      Shape ground = lot.and(strips.get(i));
      List<Integer> near = nearby.to(strips.get(i), Length.ZERO);
      // The side before goes first: what is left of a finely drawn curve is then a sliver that
      // meets hardly any of the dozens of sides within one setback's reach.
      for (int n = near.size() - 1; n >= 0; n--) {
        if (near.get(n) < i && ground.meets(strips.get(near.get(n)))) {
          ground = ground.minus(strips.get(near.get(n)));
        }
      }
      taken.add(new Taken(taking.get(i), ground));
    }
    return List.copyOf(taken);
  }

  /**
   * The sides without which something would be left, when nothing is left; all sides with a
   * distance if only several together could give room.
   */
  public static List<Side> culprits(Shape lot, List<Side> sides) {
    List<Side> asking = sides.stream().filter(s -> s.distance().metres() > 0).toList();
    List<Side> found = new ArrayList<>();
    for (Side side : asking) {
      List<Side> without = new ArrayList<>(sides);
      without.replaceAll(s -> s == side ? new Side(s.name(), s.line(), s.arc(), Length.ZERO) : s);
      if (!buildable(lot, without).isEmpty()) {
        found.add(side);
      }
    }
    return found.isEmpty() ? asking : found;
  }

  /** What keeps away from one side: all within its distance, and the wedges at its corners. */
  private static List<Geometry> pieces(List<Side> sides, int at) {
    Side before = sides.get((at + sides.size() - 1) % sides.size());
    Side side = sides.get(at);
    Side after = sides.get((at + 1) % sides.size());
    List<Geometry> pieces = new ArrayList<>();
    double d = side.distance().metres();
    if (d == 0) {
      return pieces;
    }
    Coordinate[] c = side.line().jts().getCoordinates();
    pieces.addAll(Around.pieces(side.line().jts(), d));
    boolean smooth = side.arc().isPresent() || c.length > Around.MANY_PIECES;
    for (int i = 1; i + 1 < c.length && !smooth; i++) {
      CornerWedges.add(c[i - 1], c[i], c[i + 1], d, d, pieces);
    }
    Coordinate[] b = before.line().jts().getCoordinates();
    Coordinate[] a = after.line().jts().getCoordinates();
    CornerWedges.add(b[b.length - 2], c[0], c[1], before.distance().metres(), d, pieces);
    CornerWedges.add(c[c.length - 2], c[c.length - 1], a[1], d, after.distance().metres(), pieces);
    return pieces;
  }

  private static void check(Shape lot, List<Side> sides, Shape free) {
    Postconditions.smaller(lot, free, "setback");
    if (free.isEmpty()) {
      return;
    }
    IndexedFacetDistance to = new IndexedFacetDistance(free.jts());
    for (Side side : sides) {
      // The chords of an arc lie up to a sagitta inside or outside of it.
      Length tolerance = side.arc().isPresent() ? TOLERANCE.plus(Arc.SAGITTA) : TOLERANCE;
      double gotM = to.distance(side.line().jts());
      if (gotM < side.distance().minus(tolerance).metres()) {
        throw Postconditions.broken(
            "setback from " + side.name(),
            "comes as near as " + gotM + " m, asked for " + side.distance(),
            lot);
      }
    }
  }
}
