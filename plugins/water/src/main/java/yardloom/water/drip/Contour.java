package yardloom.water.drip;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Slope;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Where the ground falls along a bed, its rows follow the contour, so that tubes do not run empty
 * at their lower ends and water does not run along them; unless the bed is so narrow that they
 * would be all fittings.
 *
 * @param bearing of the contour through the middle of the bed
 * @param falls how much the ground falls along the bed, over its length
 */
record Contour(Angle bearing, Derived<Double> falls) {
  /** Said by {@code contourRows}. */
  static final AttributeKey<Double> FROM = new AttributeKey<>("water.contour-from", Double.class);

  /** From here on; the usual limit for tubes that run downhill (common practice). */
  private static final double USUAL_GRADE = 0.05;

  /** Shorter rows would be all fittings (common practice). */
  private static final Length LEAST_ROW = Length.feet(6);

  private static final Source RULE =
      Source.commonPractice(
          "rows follow the contour where the ground falls by 5 percent and more, unless they would be"
              + " shorter than 6 ft (1.8 m)");

  /** Empty where rows follow the bed. */
  static Optional<Contour> of(Plan plan, Element bed, Shape ground) {
    if (!(bed instanceof Element.Bed) || ground.isEmpty()) {
      return Optional.empty();
    }
    double from = plan.said(FROM).map(Entry::value).orElse(USUAL_GRADE);
    Optional<Slope> slope =
        plan.attributes().get(Surface.KEY).flatMap((Surface s) -> s.slopeAt(ground.heart()));
    Angle axis = LongAxis.of(ground).bearing();
    return slope
        .filter(s -> Math.abs(s.along(axis)) >= from)
        .filter(s -> LongAxis.along(ground, s.contourBearing()).length().compareTo(LEAST_ROW) >= 0)
        .map(
            s ->
                new Contour(
                    s.contourBearing(),
                    Derived.by("slope × cosine of the angle between bed and fall", RULE)
                        .from("slope", s.ratio())
                        .from(
                            "cosine of the angle between bed and fall",
                            Math.abs(s.along(axis)) / s.ratio())
                        .gives(Math.abs(s.along(axis)))));
  }
}
