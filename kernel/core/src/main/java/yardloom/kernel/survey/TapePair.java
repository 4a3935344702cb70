package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;

/**
 * Two fixed points from which others are set out with two tapes: the reverse of {@link TapeFix}.
 *
 * <p>Two tapes mark a point best where they cross squarely. Near the line through both fixed points
 * a small error of a tape moves the point far; so the tapes should cross at {@link
 * #FLATTEST_DEGREES} to 180 − {@link #FLATTEST_DEGREES} degrees. The side of the line is needed
 * because the tapes meet on both.
 *
 * <p>References: common practice: two tapes from fixed points; the 30 degrees are a usual limit for
 * the crossing of two measured lines, from memory.
 */
public record TapePair(Point a, Point b) {
  /** Tapes that cross at less than this, or at more than 180 degrees less this, cross weakly. */
  public static final double FLATTEST_DEGREES = 30;

  private static final double CLOSEST_M = 1;
  private static final double ON_LINE_M = 0.005;
  private static final double ROUNDING = 1e-9;

  /** Seen from A towards B. */
  public enum Side {
    LEFT,
    RIGHT,
    ON
  }

  public TapePair {
    if (a.distance(b).metres() < 1e-6) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, "two tapes need two different fixed points, got one twice");
    }
  }

  /**
   * The pair of {@code fixed} points, at least 1 m apart, from which the most {@code targets} are
   * reached by two free tapes that cross well; of pairs alike the one whose worst such crossing is
   * squarest, then the longest, then the first in the list. Empty if no two points are far enough
   * apart, or nothing is to be set out.
   *
   * @param isFree whether a tape can be stretched from a fixed point to a target
   */
  public static Optional<TapePair> best(
      List<Point> fixed, List<Point> targets, BiPredicate<Point, Point> isFree) {
    if (targets.isEmpty()) {
      return Optional.empty();
    }
    List<List<Point>> seen = new ArrayList<>();
    for (Point from : fixed) {
      seen.add(targets.stream().filter(t -> isFree.test(from, t)).toList());
    }
    Optional<Rated> best = Optional.empty();
    for (int i = 0; i < fixed.size(); i++) {
      for (int j = i + 1; j < fixed.size(); j++) {
        if (fixed.get(i).distance(fixed.get(j)).metres() >= CLOSEST_M) {
          List<Point> both = new ArrayList<>(seen.get(i));
          both.retainAll(seen.get(j));
          Rated rated = Rated.of(new TapePair(fixed.get(i), fixed.get(j)), both);
          best = Optional.of(best.filter(b -> !rated.isBetterThan(b)).orElse(rated));
        }
      }
    }
    return best.map(Rated::pair);
  }

  /** A pair with what decides. */
  private record Rated(TapePair pair, int good, double worstSine, double lengthM) {
    static Rated of(TapePair pair, List<Point> targets) {
      List<Point> good = targets.stream().filter(pair::crossesWell).toList();
      double worst =
          good.stream()
              .mapToDouble(t -> StrictMath.sin(pair.crossing(t).radians()))
              .min()
              .orElse(0);
      return new Rated(pair, good.size(), worst, pair.a.distance(pair.b).metres());
    }

    boolean isBetterThan(Rated other) {
      if (good != other.good) {
        return good > other.good;
      }
      if (Math.abs(worstSine - other.worstSine) > ROUNDING) {
        return worstSine > other.worstSine;
      }
      return lengthM > other.lengthM + ROUNDING;
    }
  }

  /** On which side of the line from A to B the point lies; on it within 5 mm. */
  public Side side(Point at) {
    double leftM = cross(a, b, at) / a.distance(b).metres();
    if (Math.abs(leftM) <= ON_LINE_M) {
      return Side.ON;
    }
    return leftM > 0 ? Side.LEFT : Side.RIGHT;
  }

  /** The angle between both tapes at the point, 0 to 180 degrees; 0 at a fixed point itself. */
  public Angle crossing(Point at) {
    double dot =
        a.x().minus(at.x()).metres() * b.x().minus(at.x()).metres()
            + a.y().minus(at.y()).metres() * b.y().minus(at.y()).metres();
    return Angle.radians(StrictMath.atan2(Math.abs(cross(at, a, b)), dot));
  }

  /** Whether the tapes cross at 30 to 150 degrees. */
  public boolean crossesWell(Point at) {
    double degrees = crossing(at).degrees();
    return degrees >= FLATTEST_DEGREES - ROUNDING && degrees <= 180 - FLATTEST_DEGREES + ROUNDING;
  }

  /** Twice the area of the triangle, positive if {@code q} is left of the line from o to p. */
  private static double cross(Point o, Point p, Point q) {
    return p.x().minus(o.x()).metres() * q.y().minus(o.y()).metres()
        - p.y().minus(o.y()).metres() * q.x().minus(o.x()).metres();
  }
}
