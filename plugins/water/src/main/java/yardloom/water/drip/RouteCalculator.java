package yardloom.water.drip;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.water.head.Supply;
import yardloom.water.overflow.Basin;
import yardloom.water.route.LineWays;
import yardloom.water.tank.TankPlan;

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
      Optional<TankPlan> source = Supply.tank(plan);
      List<Shape> around = around(plan, source);
      source
          .map(tank -> LineWays.fromTank(plan, tank.at(), tank.feet(), around, watered))
          .or(() -> LineWays.fromTap(plan, around, watered))
          .ifPresent(ways -> out.give(LineWays.KEY, ways));
    }
  }

  /** Basins, and the tanks that do not feed the lines. */
  private static List<Shape> around(Plan plan, Optional<TankPlan> source) {
    Stream<Shape> basins =
        plan.attributes().all(Basin.KEY).stream().map(basin -> basin.value().shape());
    Stream<Shape> tanks =
        plan.attributes().all(TankPlan.KEY).stream()
            .map(Entry::value)
            .filter(tank -> source.filter(tank::equals).isEmpty())
            .flatMap(tank -> tank.feet().stream());
    return Stream.concat(basins, tanks).toList();
  }
}
