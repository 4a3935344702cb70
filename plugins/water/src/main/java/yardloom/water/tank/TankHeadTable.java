package yardloom.water.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Pressure;
import yardloom.water.pipe.formula.Water;

/** The head that a tank gives at each bed by its height alone, full and nearly empty. */
public final class TankHeadTable implements TableMaker {
  private static final String ID = "tank-head";

  /** Where compensating outlets begin to work, 7 to 15 psi by make (common practice). */
  private static final Pressure COMPENSATING = Pressure.psi(7);

  /** What plain outlets want to drip evenly (common practice). */
  private static final Pressure PLAIN = Pressure.psi(1);

  private static final Source HYDROSTATICS =
      Source.commonPractice("0.433 psi for each foot of water, 9.8 kPa for each metre");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.STANDS, TankYear.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, "Head from the tank, by gravity")
            .column(Column.text("bed", "Bed or tree"))
            .column(Column.text("tank", "Tank"))
            .column(Column.of("drop", "Foot of the tank above it", Measure.LENGTH))
            .column(Column.of("full", "Pressure, tank full", Measure.PRESSURE))
            .column(Column.of("low", "nearly empty", Measure.PRESSURE))
            .column(Column.text("use", "What it runs"));
    List<TankYear> years = facts.all(TankYear.KEY);
    List<Integer> months =
        IntStream.range(0, 12)
            .filter(m -> years.stream().anyMatch(y -> y.months().get(m).need().litres() > 0))
            .boxed()
            .toList();
    months.forEach(m -> table.column(Column.of("m" + (m + 1), Months.name(m), Measure.PRESSURE)));
    Optional<Surface> ground = plan.attributes().get(Surface.KEY);
    boolean any = false;
    for (Entry<TankPlan> entry : plan.attributes().all(TankPlan.KEY)) {
      for (Element served : served(plan, facts, entry.value())) {
        Optional<Length> drop = drop(ground, entry.value(), served);
        if (drop.isPresent()) {
          any = true;
          List<Cell> cells = new ArrayList<>(row(entry, served, drop.get()));
          months.forEach(m -> cells.add(inMonth(entry, drop.get(), m, years)));
          table.row(cells);
        }
      }
    }
    if (any && !months.isEmpty()) {
      table.note(
          "By month: with the water that stands in the tank on the mean day of that month, in a"
              + " usual year, by the same days as the table of tank sizes.");
    }
    if (any) {
      table.note(
          (ground.isEmpty() ? "The ground is taken as level, since the plan gives no levels. " : "")
              + "Without the friction of the line, which takes little at the flow that such heads"
              + " drive: take tube of 3/4 in (19 mm) and more. It falls as the tank empties;"
              + " compensating outlets want 7 psi (48 kPa) and more, so below that plain outlets,"
              + " soaker hose or a can, or a small pump.");
    }
    return table.build();
  }

  private static List<Element> served(Plan plan, Facts facts, TankPlan tank) {
    List<Element> all = new ArrayList<>();
    all.addAll(plan.all(Element.Bed.class));
    all.addAll(
        plan.all(Element.Tree.class).stream()
            .filter(t -> facts.all(YardFacts.STANDS).stream().anyMatch(s -> s.in().equals(t.id())))
            .toList());
    return all.stream()
        .filter(
            e ->
                tank.drawing().serves().isEmpty()
                    || tank.drawing().serves().contains(e.id().name()))
        .toList();
  }

  /** Empty where the levels do not reach. */
  private static Optional<Length> drop(Optional<Surface> ground, TankPlan tank, Element served) {
    if (ground.isEmpty()) {
      return Optional.of(tank.body().stand());
    }
    Point at = served instanceof Element.Tree tree ? tree.at() : served.shape().heart();
    return ground
        .get()
        .levelAt(tank.at())
        .flatMap(t -> ground.get().levelAt(at).map(b -> t.plus(tank.body().stand()).minus(b)));
  }

  private static List<Cell> row(Entry<TankPlan> entry, Element served, Length drop) {
    TankPlan tank = entry.value();
    Derived<Pressure> full = pressure(entry, drop, tank.body().height(), "water when full");
    Derived<Pressure> low = pressure(entry, drop, TankPlan.OUTLET, "water above the outlet");
    return List.of(
        Cell.text(served.id().name()),
        Cell.text(tank.name()),
        Cell.of(drop),
        Cell.of(full),
        Cell.of(low),
        Cell.text(use(full.value(), low.value())));
  }

  private static Cell inMonth(Entry<TankPlan> entry, Length drop, int month, List<TankYear> years) {
    return years.stream()
        .filter(y -> y.tank().equals(entry.value()))
        .map(y -> y.months().get(month).water())
        .map(w -> Cell.of(pressure(entry, drop, w, "water of " + Months.name(month))))
        .findFirst()
        .orElse(Cell.BLANK);
  }

  private static String use(Pressure full, Pressure low) {
    if (full.compareTo(Pressure.ZERO) <= 0) {
      return "nothing: it lies above the water; a pump";
    }
    if (low.compareTo(COMPENSATING) >= 0) {
      return "compensating dripline";
    }
    if (low.compareTo(PLAIN) >= 0) {
      return "plain outlets, soaker hose";
    }
    return full.compareTo(PLAIN) >= 0 ? "plain outlets while it is full; then a can" : "a can";
  }

  /** Never less than none: water does not climb. */
  private static Derived<Pressure> pressure(
      Entry<TankPlan> entry, Length drop, Length water, String what) {
    Length head = drop.plus(water).max(Length.ZERO);
    return Derived.by("max(drop + " + what + ", 0 ft) × 0.43314 psi / 1 ft", HYDROSTATICS)
        .from("drop", drop, entry.place())
        .from(what, water, entry.place())
        .gives(Water.pressure(head));
  }
}
