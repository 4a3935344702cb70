package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * A circular arc from {@code start} to {@code end} about {@code centre}.
 *
 * <p>Drawn as an arc; calculated on chords whose greatest distance from the arc (sagitta) is given,
 * usually {@link #SAGITTA}. A chord over the angle θ has the sagitta r (1 − cos θ/2), hence θ = 2
 * acos(1 − sagitta/r).
 *
 * @param left whether the arc turns to the left on its way, counter-clockwise about its centre
 */
public record Arc(Point start, Point end, Point centre, boolean left) {
  /** How far chords may lie inside the arc unless somebody asks otherwise. */
  public static final Length SAGITTA = Length.millimetres(2);

  private static final double SAME_RADIUS_M = 0.01;
  private static final int MOST_CHORDS = 20_000;

  /**
   * Checks that both ends are equally far from the centre, to 10 mm.
   *
   * @throws PlanException (CONTRADICTION) if they are not
   */
  public Arc {
    double first = start.distance(centre).metres();
    double second = end.distance(centre).metres();
    if (Math.abs(first - second) > SAME_RADIUS_M || first < SAME_RADIUS_M) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "the ends of an arc must be equally far from its centre; they are "
              + Length.metres(first)
              + " and "
              + Length.metres(second)
              + " away");
    }
  }

  public Length radius() {
    return start.distance(centre);
  }

  /** The angle at the centre, above zero, up to a full turn. */
  public Angle delta() {
    double turn = angle(end) - angle(start);
    double swept = left ? turn : -turn;
    double full = 2 * Math.PI;
    double inRange = ((swept % full) + full) % full;
    return Angle.radians(inRange == 0 ? full : inRange);
  }

  /** The length along the arc. */
  public Length length() {
    return radius().times(delta().radians());
  }

  private double angle(Point p) {
    return StrictMath.atan2(p.y().minus(centre.y()).metres(), p.x().minus(centre.x()).metres());
  }

  /** How many chords keep the arc within {@code sagitta}; at least one. */
  public static int chordCount(Length radius, Angle delta, Length sagitta) {
    double ratio = 1 - sagitta.metres() / radius.metres();
    double step = 2 * StrictMath.acos(Math.max(-1, Math.min(1, ratio)));
    double count = step == 0 ? MOST_CHORDS : Math.ceil(delta.radians() / step - 1e-9);
    return (int) Math.max(1, Math.min(MOST_CHORDS, count));
  }

  /** The chords of this arc within {@code sagitta}; their corners lie on the arc. */
  public Line chords(Length sagitta) {
    int chords = chordCount(radius(), delta(), sagitta);
    double from = angle(start);
    double step = delta().radians() / chords * (left ? 1 : -1);
    double radiusM = radius().metres();
    List<Point> points = new ArrayList<>();
    points.add(start);
    for (int i = 1; i < chords; i++) {
      double a = from + i * step;
      points.add(
          centre.moved(
              Length.metres(radiusM * StrictMath.cos(a)),
              Length.metres(radiusM * StrictMath.sin(a))));
    }
    points.add(end);
    return Line.through(points);
  }

  /** The same arc, drawn the other way. */
  public Arc reversed() {
    return new Arc(end, start, centre, !left);
  }
}
