package yardloom.water.tank;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.DoubleStream;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.WaterDemand;
import yardloom.water.need.WaterText;
import yardloom.water.roof.WaterSupply;
import yardloom.water.tank.formula.TankBehaviour.Order;
import yardloom.water.tank.formula.TankSize;
import yardloom.water.tank.formula.TankYear;

/** What tanks of several sizes would make of the roof water. */
public final class TankTable implements TableMaker {
  private static final String ID = "tank-sizes";

  private static final double[] US_GALLONS = {55, 110, 250, 500, 1000, 1500, 2500, 5000};
  private static final double[] METRIC_LITRES = {200, 400, 1000, 2000, 4000, 6000, 10_000, 20_000};

  private static final Source ORDERS =
      Source.memory(
          "Yield after and before spillage (Jenkins et al. 1978)",
          "via Fewkes and Butler",
          2000,
          "");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(WaterDemand.KEY, WaterSupply.KEY, YardFacts.DAILY_RAIN);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = columns();
    TankSteps steps = TankSteps.of(plan, facts);
    Volume yield = steps.yearlyYield();
    Volume need = steps.yearlyNeed();
    if (yield.litres() == 0 || need.litres() == 0) {
      return table.build();
    }
    sizes(plan.info().units()).forEach(size -> row(table, size, steps, need));
    Volume rule = TankSize.fivePercent(yield, need);
    table.note(steps.note());
    table.note(
        "Need: "
            + GrossNeed.TITLE.toLowerCase(Locale.ROOT)
            + ", "
            + WaterText.both(plan, need)
            + " a year; what plants take over the efficiency of drip.");
    table.note(
        "Five percent of the lesser of yearly yield and need is "
            + WaterText.both(plan, rule)
            + ": BS 8515:2009, intermediate approach, as quoted by suppliers; made for even rain.");
    table.note(
        "Not drinking water. Footing, overflow and distance from foundations follow the local code.");
    return table.build();
  }

  private static Table.Builder columns() {
    return Table.titled(ID, "Tank sizes for roof water")
        .column(Column.of("size", "Tank", Measure.WATER))
        .column(Column.of("used", "Used in a year, at least", Measure.WATER))
        .column(Column.of("met-least", "Need met, at least", Measure.PERCENT))
        .column(Column.of("met-most", "Need met, at most", Measure.PERCENT))
        .column(Column.of("overflow", "Overflow in a year", Measure.WATER))
        .column(Column.of("weight", "Water when full weighs", Measure.MASS));
  }

  private static void row(Table.Builder table, Volume size, TankSteps steps, Volume need) {
    TankYear cautious =
        TankYear.of(Order.YIELD_AFTER_SPILL, size, steps.inflows(), steps.demands());
    TankYear hopeful =
        TankYear.of(Order.YIELD_BEFORE_SPILL, size, steps.inflows(), steps.demands());
    Volume least = cautious.yield().div(steps.years());
    Volume most = hopeful.yield().div(steps.years());
    table.row(
        Cell.of(size),
        Cell.of(why(steps, size, "use before rain").gives(least)),
        Cell.of(why(steps, size, "use before rain").from("need", need).gives(least.ratioTo(need))),
        Cell.of(why(steps, size, "rain before use").from("need", need).gives(most.ratioTo(need))),
        Cell.of(why(steps, size, "use before rain").gives(cautious.spill().div(steps.years()))),
        Cell.of(Mass.kilograms(size.litres())));
  }

  private static Derived.Builder why(TankSteps steps, Volume size, String order) {
    return Derived.by(steps.how() + order, ORDERS).from("tank", size);
  }

  private static List<Volume> sizes(UnitSystem units) {
    return units == UnitSystem.US
        ? DoubleStream.of(US_GALLONS).mapToObj(Volume::gallons).toList()
        : DoubleStream.of(METRIC_LITRES).mapToObj(Volume::litres).toList();
  }
}
