package yardloom.site.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.Ways;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.WayNetwork;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.site.path.PathStandard;

/** The paths and hard surfaces of a plan, as the hauls and the ways to the beds use them. */
public final class WaysCalculator implements Calculator {
  @Override
  public String id() {
    return "site.ways";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of();
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.WAYS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    out.give(YardFacts.WAYS, of(plan));
  }

  static Ways of(Plan plan) {
    return new Ways(ways(plan, barrowWidth(plan)), ways(plan, Length.ZERO));
  }

  /** The width that a barrow needs in this plan. */
  static Length barrowWidth(Plan plan) {
    return PathStandard.of(plan, PathUse.BARROW).least().value();
  }

  private static List<WayNetwork.Way> ways(Plan plan, Length leastWidth) {
    List<WayNetwork.Way> ways = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      if (!path.width().isShortOf(leastWidth)) {
        ways.add(new WayNetwork.Way(path.shape(), Optional.of(path.line())));
      }
    }
    for (Element.Paving paving : plan.all(Element.Paving.class)) {
      ways.add(new WayNetwork.Way(paving.shape(), Optional.empty()));
    }
    return ways;
  }
}
