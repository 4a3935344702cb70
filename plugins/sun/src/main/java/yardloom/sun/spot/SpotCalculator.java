package yardloom.sun.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.sun.light.LightScheme;
import yardloom.sun.spot.SpotWords.BestSpot;
import yardloom.sun.yard.SunField;
import yardloom.sun.yard.SunSettings;

/**
 * Looks for the sunniest free ground. Free is what lies inside the setbacks and is not kept out,
 * not near a buried line, not built, paved, planted as a bed or within {@link #FROM_TRUNK} of a
 * trunk. Gives nothing unless the plan asks, has a lot and its sun is known.
 */
public final class SpotCalculator implements Calculator {
  /** No digging nearer to a tree (common practice, no source: keep off the root plate). */
  static final Length FROM_TRUNK = Length.metres(1);

  private static final Length NARROWEST = Length.metres(1.2);
  private static final int MOST = 3;

  @Override
  public String id() {
    return "sun.spots";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(SunField.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(SunSpots.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Attributes.Entry<BestSpot>> asked = plan.attributes().all(SpotWords.BEST_SPOT);
    Optional<SunField> field = in.find(SunField.KEY);
    if (asked.isEmpty() || plan.lot().isEmpty() || field.isEmpty()) {
      return;
    }
    LightScheme scheme = SunSettings.of(plan).scheme();
    Shape free = freeGround(plan, plan.lot().get());
    List<SunSpots.Search> searches = new ArrayList<>();
    for (Attributes.Entry<BestSpot> entry : asked) {
      BestSpot spot = entry.value();
      List<SunSpots.Found> found =
          new SunnySpots(field.get().season(), free, NARROWEST.metres())
              .find(spot.area().squareMetres(), MOST).stream()
                  .map(
                      s -> new SunSpots.Found(s.ground(), s.least(), s.mean(), scheme.of(s.mean())))
                  .toList();
      double wanted = spot.hours() > 0 ? spot.hours() : scheme.classes().get(0).fromHours();
      searches.add(new SunSpots.Search(spot.crop(), spot.area(), wanted, entry.place(), found));
    }
    out.give(SunSpots.KEY, new SunSpots(searches, free));
  }

  private static Shape freeGround(Plan plan, Lot lot) {
    List<Shape> taken = new ArrayList<>();
    for (Element e : plan.elements()) {
      if (e instanceof Element.Tree tree) {
        taken.add(Shape.circle(tree.at(), tree.trunk().div(2).plus(FROM_TRUNK)));
      } else if (!(e instanceof Element.Roof) && !e.shape().isEmpty()) {
        taken.add(e.shape());
      }
    }
    return lot.insideSetbacks().minus(Shape.union(taken));
  }
}
