package yardloom.water.drip;

import java.util.List;
import java.util.Set;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.water.head.Supply;
import yardloom.water.route.LineWays;

/**
 * Finds the ways that pipe may take, where a plan has dripline and a tap, or a tank that feeds it.
 */
public final class RouteCalculator implements Calculator {
  @Override
  public String id() {
    return "water.routes";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(LineWays.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Shape> watered =
        plan.elements().stream()
            .filter((Element e) -> !e.attributes().all(DripChoice.KEY).isEmpty())
            .map(Element::shape)
            .toList();
    if (!watered.isEmpty()) {
      Supply.tank(plan)
          .map(tank -> LineWays.fromTank(plan, tank.at(), tank.feet(), watered))
          .or(() -> LineWays.fromTap(plan, watered))
          .ifPresent(ways -> out.give(LineWays.KEY, ways));
    }
  }
}
