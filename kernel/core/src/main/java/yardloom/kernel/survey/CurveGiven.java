package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * What a description says about a curve; any two elements suffice, further ones are checked against
 * them.
 *
 * <p>Radius and central angle are taken first, then the length, then the chord. From length and
 * chord alone the half angle x follows from sin x / x = C/L. A chord with a radius is taken to be
 * of the shorter arc.
 */
public record CurveGiven(
    Optional<Length> radius,
    Optional<Angle> delta,
    Optional<Length> length,
    Optional<Length> chord,
    Curve.Definition definition) {

  /** Rounding to the hundredth of a foot in each of two elements. */
  private static final Length LENGTH_TOLERANCE = Length.feet(0.02);

  /** An element that does not agree with the others. */
  public record Discrepancy(String element, String given, String computed) {
    @Override
    public String toString() {
      return element + " is given as " + given + ", the other elements make it " + computed;
    }
  }

  /** The curve and what disagrees with it. */
  public record Solved(Curve curve, List<Discrepancy> discrepancies) {
    public Solved {
      discrepancies = List.copyOf(discrepancies);
    }
  }

  /**
   * The curve.
   *
   * @throws PlanException (MISSING_OPTION) if fewer than two elements are given, (OUT_OF_RANGE) or
   *     (CONTRADICTION) if no curve has them
   */
  public Solved solve() {
    requirePositive("radius", radius);
    requirePositive("length", length);
    requirePositive("chord", chord);
    delta.ifPresent(CurveGiven::requireDelta);
    Curve curve = curve();
    requireDelta(curve.delta());
    List<Discrepancy> found = new ArrayList<>();
    compare("length of the curve", length, curve.countedLength(), found);
    compare("chord", chord, curve.chord(), found);
    return new Solved(curve, found);
  }

  private Curve curve() {
    if (radius.isPresent()) {
      return new Curve(radius.get(), angleFor(radius.get()), definition);
    }
    if (delta.isPresent()) {
      return new Curve(radiusFor(delta.get()), delta.get(), definition);
    }
    double ratio =
        chord.orElseThrow(CurveGiven::tooFew).ratioTo(length.orElseThrow(CurveGiven::tooFew));
    Angle angle = Angle.radians(2 * halfAngle(ratio));
    return new Curve(length.get().div(angle.radians()), angle, Curve.Definition.ARC);
  }

  private Angle angleFor(Length r) {
    if (delta.isPresent()) {
      return delta.get();
    }
    if (length.isPresent()) {
      return definition == Curve.Definition.ARC
          ? Angle.radians(length.get().ratioTo(r))
          : Curve.degreeOfCurve(r, definition).times(length.get().feet() / 100);
    }
    double sine = chord.orElseThrow(CurveGiven::tooFew).ratioTo(r.times(2));
    if (sine > 1) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "a chord of "
              + chord.get()
              + " is longer than the diameter of a curve with a radius of "
              + r);
    }
    return Angle.radians(2 * StrictMath.asin(sine));
  }

  private Length radiusFor(Angle d) {
    if (length.isPresent() && definition == Curve.Definition.ARC) {
      return length.get().div(d.radians());
    }
    if (length.isPresent()) {
      return Curve.radiusOf(d.times(100 / length.get().feet()), definition);
    }
    return chord.orElseThrow(CurveGiven::tooFew).div(2 * StrictMath.sin(d.radians() / 2));
  }

  /** The x in (0, π) with sin x / x = ratio, by bisection; the function falls throughout. */
  private static double halfAngle(double ratio) {
    if (ratio >= 1) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "the chord of a curve must be shorter than its length; they are as " + ratio + " to 1");
    }
    double low = 0;
    double high = Math.PI;
    for (int i = 0; i < 80; i++) {
      double x = (low + high) / 2;
      if (StrictMath.sin(x) / x > ratio) {
        low = x;
      } else {
        high = x;
      }
    }
    return (low + high) / 2;
  }

  private static void compare(
      String element, Optional<Length> given, Length computed, List<Discrepancy> found) {
    if (given.isPresent()
        && Math.abs(given.get().metres() - computed.metres()) > LENGTH_TOLERANCE.metres()) {
      found.add(new Discrepancy(element, feet(given.get()), feet(computed)));
    }
  }

  private static String feet(Length value) {
    return String.format(java.util.Locale.ROOT, "%.2f ft (%.3f m)", value.feet(), value.metres());
  }

  private static void requirePositive(String element, Optional<Length> value) {
    if (value.isPresent() && value.get().metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the " + element + " of a curve must be more than zero, got " + value.get());
    }
  }

  private static void requireDelta(Angle d) {
    if (d.degrees() <= 0 || d.degrees() >= 360) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the central angle of a curve must lie between 0 and 360 degrees, got " + d.degrees());
    }
  }

  private static PlanException tooFew() {
    return new PlanException(
        ProblemCode.MISSING_OPTION,
        "a curve needs two of radius, central angle (delta), length and chord");
  }
}
