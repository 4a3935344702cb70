package yardloom.planting.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinning;
import yardloom.planting.suit.rule.ReasonWords;

/**
 * Flags plants that will grow over a tap, where the head of the drip with its filter and timer
 * sits: nearer than half their grown spread, or a foot. Of what is thinned only those that stay
 * count.
 */
public final class TapCheck implements Check {
  private static final Source RULE =
      Source.commonPractice("tap, filter and timer stay in reach: plants keep half their spread");

  @Override
  public String id() {
    return "planting.taps";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      Length least = Planting.offStem(p.plant());
      for (Element.WaterPoint tap : plan.all(Element.WaterPoint.class)) {
        List<Point> near = Thinning.tooNear(p, tap.at());
        if (!near.isEmpty()) {
          found.add(
              Finding.of(
                      id(),
                      Severity.NOTE,
                      near.size()
                          + " of "
                          + p.plant().name()
                          + " will grow over "
                          + tap.id()
                          + " and what hangs on it; keep "
                          + ReasonWords.both(plan, least)
                          + " free",
                      "leave those out, take a smaller kind, or move the tap",
                      RULE)
                  .about(p.bed().id(), p.place()));
        }
      }
    }
    return found;
  }
}
