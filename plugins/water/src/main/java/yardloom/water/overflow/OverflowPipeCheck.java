package yardloom.water.overflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.water.roof.Downspout;
import yardloom.water.tank.TankPlan;

/** Tanks whose overflow leads nowhere, uphill, to the house, or is narrower than the inlet. */
public final class OverflowPipeCheck implements Check {
  private static final Length FROM_HOUSE = Length.feet(10);

  /** A line begins at its tank if it is drawn so near (common practice). */
  private static final Length AT_TANK = Length.feet(3);

  private static final Source BARREL =
      Source.read(
          "Tip on rain barrels; rainwater weblog on overflows",
          "a horticulture magazine; a Texas rainwater installer",
          0,
          "overflow at least as wide as the inlet, led 10 ft and more from foundations");

  @Override
  public String id() {
    return "water.overflow";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of();
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    List<Entry<OverflowPipe>> pipes = plan.attributes().all(OverflowPipe.KEY);
    List<Entry<TankPlan>> tanks = plan.attributes().all(TankPlan.KEY);
    for (Entry<TankPlan> tank : tanks) {
      if (pipes.stream().noneMatch(p -> p.value().from().equals(tank.value().name()))) {
        found.add(
            finding(
                    "the tank '" + tank.value().name() + "' has no overflow",
                    "lead it to a basin or where water may sink in: overflow(line([…]), from: '"
                        + tank.value().name()
                        + "', inside: 3.inch)")
                .at(tank.place()));
      }
    }
    for (Entry<OverflowPipe> pipe : pipes) {
      Optional<TankPlan> tank =
          tanks.stream()
              .map(Entry::value)
              .filter(t -> t.name().equals(pipe.value().from()))
              .findFirst();
      if (tank.isEmpty()) {
        found.add(
            finding(
                    "there is no tank '" + pipe.value().from() + "' for the overflow",
                    "name a tank of the plan")
                .at(pipe.place()));
      } else {
        way(plan, pipe, tank.get(), found);
      }
    }
    return found;
  }

  private void way(Plan plan, Entry<OverflowPipe> pipe, TankPlan tank, List<Finding> found) {
    Point start = pipe.value().line().start();
    Point end = pipe.value().line().end();
    if (start
            .distance(tank.at())
            .compareTo(AT_TANK.plus(tank.body().width().times(tank.body().count())))
        > 0) {
      found.add(
          finding(
                  "the overflow of '" + tank.name() + "' does not begin at the tank",
                  "begin the line at the tank and end it where the water sinks in")
              .at(pipe.place()));
    }
    for (Element.Building house : plan.all(Element.Building.class)) {
      Length gap = house.shape().distance(end);
      if (gap.compareTo(FROM_HOUSE) < 0) {
        found.add(
            finding(
                    "the overflow of '"
                        + tank.name()
                        + "' ends "
                        + Say.both(Measure.LENGTH, gap, plan.info().units())
                        + " from '"
                        + house.id().name()
                        + "'",
                    "lead it 10 ft (3 m) and more from foundations, better into a basin")
                .at(pipe.place()));
      }
    }
    uphill(plan, pipe, tank, found);
    narrow(plan, pipe, tank, found);
  }

  /** From the top of the stand on; where levels are given. */
  private void uphill(Plan plan, Entry<OverflowPipe> pipe, TankPlan tank, List<Finding> found) {
    Optional<Surface> ground = plan.attributes().get(Surface.KEY);
    Optional<Length> from = ground.flatMap(g -> g.levelAt(tank.at()));
    Optional<Length> to = ground.flatMap(g -> g.levelAt(pipe.value().line().end()));
    if (from.isPresent() && to.isPresent()) {
      Length rim = from.get().plus(tank.body().stand()).plus(tank.body().height());
      if (to.get().compareTo(rim) >= 0) {
        found.add(
            finding(
                    "the overflow of '" + tank.name() + "' ends above the rim of the tank",
                    "lead it to lower ground")
                .at(pipe.place()));
      }
    }
  }

  private void narrow(Plan plan, Entry<OverflowPipe> pipe, TankPlan tank, List<Finding> found) {
    Area inlet = Downspout.section(plan, tank.filling().roof());
    double m = pipe.value().inside().metres();
    Area section = Area.squareMetres(Math.PI / 4 * m * m);
    if (section.squareMetres() < inlet.squareMetres() * (1 - 1e-9)) {
      found.add(
          finding(
                  "the overflow of '"
                      + tank.name()
                      + "' is narrower than the downspouts that fill the tank",
                  "make it as wide as the inlet, or lay two")
              .at(pipe.place()));
    }
  }

  private Finding finding(String what, String advice) {
    return Finding.of(id(), Severity.WARNING, what, advice, BARREL);
  }
}
