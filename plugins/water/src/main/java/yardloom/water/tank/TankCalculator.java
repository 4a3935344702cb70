package yardloom.water.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.WaterDemand;
import yardloom.water.roof.Roofs;
import yardloom.water.roof.formula.FirstFlush;
import yardloom.water.tank.formula.Knee;
import yardloom.water.tank.formula.TankBehaviour.Order;

/**
 * Gives what tanks of growing size bring: for each tank of the plan with its roof and what it
 * serves; where the plan has none, for all roofs and the whole need.
 */
public final class TankCalculator implements Calculator {
  private static final double[] US_GALLONS = {55, 110, 250, 500, 1000, 1500, 2500, 5000};
  private static final double[] METRIC_LITRES = {200, 400, 1000, 2000, 4000, 6000, 10_000, 20_000};

  @Override
  public String id() {
    return "water.tanks";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.CLIMATE, YardFacts.DAILY_RAIN, WaterDemand.KEY, TankZone.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(TankCurve.KEY, TankYear.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    if (plan.all(Element.Roof.class).isEmpty()) {
      return; // no roof, no water: nothing to make thirty years of rain for
    }
    Optional<RainYears> rain = RainYears.of(in);
    if (rain.isEmpty()) {
      return;
    }
    List<Entry<TankPlan>> tanks = plan.attributes().all(TankPlan.KEY);
    List<WaterDemand> demands = in.all(WaterDemand.KEY);
    if (tanks.isEmpty()) {
      TankYears years =
          new TankYears(
              plan,
              rain.get(),
              plan.all(Element.Roof.class),
              monthly(demands),
              FirstFlush.LEAST,
              TankWords.USUAL_SCREEN,
              Order.YIELD_AFTER_SPILL,
              1);
      give(plan, Optional.empty(), years, out);
    }
    for (Entry<TankPlan> entry : tanks) {
      TankPlan tank = entry.value();
      List<WaterDemand> its =
          demands.stream()
              .filter(
                  d ->
                      tank.drawing().serves().isEmpty()
                          || tank.drawing().serves().contains(d.of().name()))
              .toList();
      TankYears years =
          new TankYears(
              plan,
              rain.get(),
              Roofs.called(plan, tank.filling().roof()).stream().toList(),
              with(monthly(its), tank.drawing().otherUse()),
              tank.filling().firstFlush(),
              tank.filling().screened(),
              tank.drawing().order(),
              usable(tank, in));
      give(plan, Optional.of(tank), years, out);
    }
  }

  /** What stands below the level at which the lines stop is of no use to them. */
  private static double usable(TankPlan tank, Facts in) {
    return TankZone.lowest(tank, in)
        .map(stop -> 1 - stop.ratioTo(tank.body().height()))
        .orElse(1.0);
  }

  private static List<Volume> monthly(List<WaterDemand> demands) {
    return GrossNeed.monthly(demands).stream().map(Derived::value).toList();
  }

  private static List<Volume> with(List<Volume> months, Volume daily) {
    List<Volume> all = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      all.add(months.get(m).plus(daily.times(Months.days(m))));
    }
    return all;
  }

  private static void give(Plan plan, Optional<TankPlan> tank, TankYears years, Sink out) {
    if (years.meanYield().litres() <= 0 || years.meanNeed().litres() <= 0) {
      return;
    }
    List<TankCurve.Point> points = new ArrayList<>();
    for (Volume size : sizes(plan.info().units(), tank)) {
      points.add(years.point(size));
    }
    tank.map(years::year).ifPresent(year -> out.give(TankYear.KEY, year));
    int knee =
        Knee.of(
            points.stream().map(p -> p.size().litres()).toList(),
            points.stream().map(p -> p.used().litres()).toList());
    out.give(
        TankCurve.KEY,
        new TankCurve(
            tank,
            years.meanYield(),
            years.meanNeed(),
            points,
            points.get(knee),
            years.how(),
            years.count()));
  }

  private static List<Volume> sizes(UnitSystem units, Optional<TankPlan> tank) {
    TreeSet<Volume> sizes = new TreeSet<>();
    if (units == UnitSystem.US) {
      DoubleStream.of(US_GALLONS).mapToObj(Volume::gallons).forEach(sizes::add);
    } else {
      DoubleStream.of(METRIC_LITRES).mapToObj(Volume::litres).forEach(sizes::add);
    }
    tank.ifPresent(t -> sizes.add(t.size()));
    return List.copyOf(sizes);
  }
}
