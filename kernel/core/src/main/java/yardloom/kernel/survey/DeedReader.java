package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/** Takes a description call by call, from words of a script or from a table. Used once. */
public final class DeedReader {
  private final List<Deed.Call> calls = new ArrayList<>();

  /** The azimuth in which the last call arrives; empty before the first. */
  private Optional<Angle> heading = Optional.empty();

  /** A straight call. */
  public void straight(String name, SourceRef place, Angle azimuth, Length distance) {
    requireOpen(place);
    if (distance.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, place, "a call must be longer than zero, got " + distance);
    }
    add(name, place, new Course(azimuth, distance), Optional.empty(), false);
    heading = Optional.of(azimuth);
  }

  /**
   * A curve.
   *
   * @param left whether it turns left on its way
   * @param chordAzimuth the direction of its chord; without it the curve must be tangent
   * @param tangent whether it starts in the direction of the call before
   */
  public void curve(
      String name,
      SourceRef place,
      CurveGiven given,
      boolean left,
      Optional<Angle> chordAzimuth,
      boolean tangent) {
    requireOpen(place);
    CurveGiven.Solved solved = given.solve();
    Angle half = solved.curve().delta().div(left ? -2 : 2);
    List<CurveGiven.Discrepancy> discrepancies = new ArrayList<>(solved.discrepancies());
    Optional<Angle> fromTangent =
        tangent ? Optional.of(tangentStart(place).plus(half)) : Optional.empty();
    if (chordAzimuth.isEmpty() && fromTangent.isEmpty()) {
      throw new PlanException(
          ProblemCode.MISSING_OPTION,
          place,
          "a curve needs the bearing of its chord, or `tangent: true` if it starts in the direction"
              + " of the call before");
    }
    if (chordAzimuth.isPresent() && fromTangent.isPresent()) {
      compareChords(chordAzimuth.get(), fromTangent.get(), discrepancies);
    }
    Angle azimuth = chordAzimuth.orElseGet(fromTangent::get);
    add(
        name,
        place,
        new Course(azimuth, solved.curve().chord()),
        Optional.of(new Deed.Bend(solved.curve(), left, discrepancies)),
        false);
    heading = Optional.of(azimuth.plus(half));
  }

  private Angle tangentStart(SourceRef place) {
    return heading.orElseThrow(
        () ->
            new PlanException(
                ProblemCode.MISSING_OPTION,
                place,
                "the first call cannot be tangent to a call before it; give the chord's bearing"));
  }

  private static void compareChords(
      Angle given, Angle computed, List<CurveGiven.Discrepancy> found) {
    double off = Math.IEEEremainder(given.degrees() - computed.degrees(), 360);
    if (Math.abs(off) * 3600 > 10) {
      found.add(
          new CurveGiven.Discrepancy(
              "chord bearing", Bearings.quadrant(given), Bearings.quadrant(computed)));
    }
  }

  /** The call that returns to the start, worked out from the others. */
  public void toStart(String name, SourceRef place) {
    requireOpen(place);
    if (calls.size() < 2) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE, place, "two calls must stand before the one back to the start");
    }
    Course closing = new Traverse(calls.stream().map(Deed.Call::chord).toList()).closing();
    if (closing.distance().metres() < 1e-6) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, place, "the calls before already end at the start");
    }
    add(name, place, closing, Optional.empty(), true);
  }

  private void requireOpen(SourceRef place) {
    if (!calls.isEmpty() && calls.get(calls.size() - 1).closes()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION, place, "the description has already returned to its start");
    }
  }

  private void add(
      String name, SourceRef place, Course chord, Optional<Deed.Bend> bend, boolean closes) {
    String given = name == null ? "side " + (calls.size() + 1) : name;
    if (calls.stream().anyMatch(c -> c.name().equals(given))) {
      throw new PlanException(
          ProblemCode.DUPLICATE,
          place,
          "two calls are named '"
              + given
              + "'; give each a name of its own, for the lot's sides take them");
    }
    calls.add(new Deed.Call(given, place, chord, bend, closes));
  }

  /**
   * The deed.
   *
   * @param turn what is added to every azimuth to bring it to the plan's up direction
   * @param adjust whether the compass rule shares out the misclosure
   */
  public Deed finish(Point start, Angle turn, boolean adjust) {
    return new Deed(start, calls, adjust).turned(turn);
  }
}
