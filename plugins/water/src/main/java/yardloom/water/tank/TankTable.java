package yardloom.water.tank;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.GrossNeed;
import yardloom.water.need.WaterText;
import yardloom.water.tank.formula.TankBehaviour.Order;
import yardloom.water.tank.formula.TankSize;

/** What tanks of several sizes would make of the roof water. */
public final class TankTable implements TableMaker {
  private static final String ID = "tank-sizes";

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
  public Optional<Audience> audience() {
    return Optional.of(Audience.CLIENT);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(TankCurve.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Tank sizes for roof water")
            .column(Column.of("size", "Tank", Measure.WATER))
            .column(Column.text("of", "Of the plan"))
            .column(Column.of("used", "Used in a mean year", Measure.WATER))
            .column(Column.of("met-dry", "Need met, dry year", Measure.PERCENT))
            .column(Column.of("met-usual", "usual year", Measure.PERCENT))
            .column(Column.of("met-wet", "wet year", Measure.PERCENT))
            .column(Column.of("short-days", "Days short of water", Measure.COUNT))
            .column(Column.of("overflow", "Overflow in a mean year", Measure.WATER))
            .column(Column.of("gain", "Used for each gallon or litre of tank", Measure.RATIO))
            .column(Column.of("weight", "Water when full weighs", Measure.MASS));
    List<TankCurve> curves = facts.all(TankCurve.KEY);
    for (TankCurve curve : curves) {
      if (curves.size() > 1) {
        table.heading(curve.name());
      }
      curve.points().forEach(point -> table.row(row(curve, point)));
    }
    curves.forEach(curve -> notes(table, plan, curve));
    if (!curves.isEmpty()) {
      table.note(
          "Not drinking water. Footing, overflow and distance from foundations follow the local"
              + " code.");
    }
    return table.build();
  }

  private static Cell[] row(TankCurve curve, TankCurve.Point point) {
    boolean isOwn = curve.own().filter(o -> o.equals(point)).isPresent();
    boolean isKnee = curve.knee().equals(point);
    return new Cell[] {
      Cell.of(point.size()),
      Cell.text(isOwn ? curve.name() : isKnee ? "knee: more brings little" : ""),
      Cell.of(why(curve, point).gives(point.used())),
      curve.years() < 2
          ? Cell.BLANK
          : Cell.of(why(curve, point).from("need", curve.need()).gives(point.dry())),
      Cell.of(why(curve, point).from("need", curve.need()).gives(point.usual())),
      curve.years() < 2
          ? Cell.BLANK
          : Cell.of(why(curve, point).from("need", curve.need()).gives(point.wet())),
      Cell.of(why(curve, point).gives((int) Math.round(point.emptyDays()))),
      Cell.of(why(curve, point).gives(point.overflow())),
      Cell.of(
          Derived.by("used / size", ORDERS)
              .from("used", point.used())
              .from("size", point.size())
              .gives(point.used().ratioTo(point.size()))),
      Cell.of(
          Derived.by("size × 8.3454 lb / 1 gal", StandingTable.ARITHMETIC)
              .from("size", point.size())
              .gives(Mass.kilograms(point.size().litres())))
    };
  }

  private static Derived.Builder why(TankCurve curve, TankCurve.Point point) {
    return Derived.by("steps of the tank, day by day through " + curve.years() + " years", ORDERS)
        .from("it holds", point.size())
        .from("comes in, mean year", curve.yield());
  }

  private static void notes(Table.Builder table, Plan plan, TankCurve curve) {
    String head = curve.name().isEmpty() ? "" : curve.name() + ": ";
    Order order = curve.tank().map(t -> t.drawing().order()).orElse(Order.YIELD_AFTER_SPILL);
    table.note(
        head
            + curve.how()
            + " "
            + (curve.years() < 2
                ? "One year tells of no drier one."
                : curve.years() < 10
                    ? "Dry and wet year are the worst and best of these."
                    : "One year in ten is drier than the dry one, one wetter than the wet one.")
            + " Within a day "
            + switch (order) {
              case YIELD_AFTER_SPILL ->
                  "use comes before rain (yield after spillage), the cautious order";
              case YIELD_BEFORE_SPILL ->
                  "rain comes before use (yield before spillage), the hopeful order";
              case CAP_THEN_DRAW -> "the tank fills to the brim, then is used";
            }
            + ".");
    table.note(
        String.format(
            Locale.ROOT,
            "%sComes in in a mean year: %s after first flush and screen. Need: %s, %s a year; what"
                + " plants take over the efficiency of drip, with what else is drawn; each month's"
                + " spread evenly over its days.",
            head,
            WaterText.both(plan, curve.yield()),
            GrossNeed.TITLE.toLowerCase(Locale.ROOT),
            WaterText.both(plan, curve.need())));
    Volume rule = TankSize.fivePercent(curve.yield(), curve.need());
    table.note(
        head
            + "The knee is where the curve lies farthest above the straight line between its ends."
            + " Five percent of the lesser of yearly yield and need is "
            + WaterText.both(plan, rule)
            + " (BS 8515:2009, intermediate approach, as quoted by suppliers; made for even"
            + " rain).");
    curve
        .tank()
        .flatMap(TankPlan::cost)
        .flatMap(cost -> curve.own().map(own -> cost(plan, head, cost, own)))
        .ifPresent(table::note);
  }

  private static String cost(Plan plan, String head, double cost, TankCurve.Point own) {
    boolean us = plan.info().units() == yardloom.kernel.unit.UnitSystem.US;
    double used = us ? own.used().gallons() / 1000 : own.used().cubicMetres();
    return String.format(
        Locale.ROOT,
        "%sIt costs %.0f %s for each %s that it gives in a mean year.",
        head,
        cost / used,
        plan.info().currency(),
        us ? "1,000 gal" : "cubic metre");
  }
}
