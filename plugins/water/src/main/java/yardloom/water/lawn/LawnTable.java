package yardloom.water.lawn;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.LawnWater;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** What the lawn took from the tap, month by month, and what takes its place. */
public final class LawnTable implements TableMaker {
  private static final String ID = "water-against-lawn";

  private static final Source LESS = Source.commonPractice("lawn − garden − trees");

  private static final String NATION =
      "To compare: a family in the US uses about 320 gal of water a day, 30 % of it outdoors, up to"
          + " 60 % in dry climates; up to 50 % of what is used outdoors is wasted (EPA WaterSense,"
          + " Outdoor Water Use in the United States, 2017).";

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
    return Set.of(YardFacts.LAWN_WATER);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table = Table.titled(ID, "Water against the lawn it replaces");
    Optional<LawnWater> lawn = facts.find(YardFacts.LAWN_WATER);
    lawn.ifPresent(water -> fill(table, water, plan));
    return table.build();
  }

  private static void fill(Table.Builder table, LawnWater water, Plan plan) {
    boolean hasTrees = hasTrees(water);
    table
        .column(Column.text("month", "Month"))
        .column(Column.of("lawn", "Lawn before", Measure.WATER))
        .column(Column.of("garden", "The grown garden takes", Measure.WATER));
    if (hasTrees) {
      table.column(Column.of("trees", "Trees that stay take", Measure.WATER));
    }
    table.column(Column.of("less", "Less by", Measure.WATER));
    for (int m = 0; m < 12; m++) {
      table.row(
          cells(
              hasTrees,
              Cell.text(Months.name(m)),
              Cell.of(water.lawn().get(m)),
              Cell.of(water.garden().get(m)),
              Cell.of(water.trees().get(m)),
              Cell.of(less(water, m))));
    }
    table.total(
        cells(
            hasTrees,
            Cell.text("Year"),
            Cell.of(LawnWater.yearly(water.lawn())),
            Cell.of(LawnWater.yearly(water.garden())),
            Cell.of(LawnWater.yearly(water.trees())),
            Cell.of(water.yearlySaving())));
    notes(table, water, plan);
  }

  private static Cell[] cells(
      boolean hasTrees, Cell month, Cell lawn, Cell garden, Cell trees, Cell less) {
    return hasTrees
        ? new Cell[] {month, lawn, garden, trees, less}
        : new Cell[] {month, lawn, garden, less};
  }

  private static Derived<Volume> less(LawnWater water, int month) {
    Derived<Volume> lawn = water.lawn().get(month);
    Derived<Volume> garden = water.garden().get(month);
    Derived<Volume> trees = water.trees().get(month);
    return Derived.by("lawn − garden − trees", LESS)
        .from("lawn", lawn)
        .from("garden", garden)
        .from("trees", trees)
        .gives(lawn.value().minus(garden.value()).minus(trees.value()));
  }

  private static void notes(Table.Builder table, LawnWater water, Plan plan) {
    TableFormat format = TableFormat.of(plan.info());
    table.note(
        "From the tap, in a year of average weather. The lawn: "
            + format.withUnit(Measure.AREA, water.ground().value())
            + " under what are beds and paths now, kept green while it grew, by sprinklers; "
            + water.lawn().get(6).source().cite()
            + grass(plan)
            + ". The garden: once established, by dripline; in its first seasons it takes more.");
    if (plan.info().units() == UnitSystem.US) {
      table.note(NATION);
    }
    if (hasTrees(water)) {
      table.note(
          "Trees that stay: if the ground under their crowns that was lawn is watered for them; "
              + water.trees().get(6).source().cite()
              + ".");
    }
  }

  /** How the grass was kept, for whoever compares it with the lawn next door. */
  private static String grass(Plan plan) {
    return plan.attributes()
        .get(FormerLawn.KEY)
        .map(lawn -> LawnData.turf(lawn.turf()).value())
        .map(
            g ->
                "; mown at "
                    + Say.both(Measure.WIDTH, g.height(), plan.info().units())
                    + ", rooted "
                    + plan.info()
                        .units()
                        .both(
                            String.format(
                                Locale.ROOT,
                                "%.0f to %.0f in",
                                g.rootsFrom().inches(),
                                g.rootsTo().inches()),
                            String.format(
                                Locale.ROOT,
                                "%.1f to %.1f m",
                                g.rootsFrom().metres(),
                                g.rootsTo().metres()))
                    + ", watered when "
                    + Math.round(100 * g.easyShare())
                    + " % of what these hold was drawn")
        .orElse("");
  }

  private static boolean hasTrees(LawnWater water) {
    return water.trees().stream().anyMatch(t -> t.value().litres() > 0);
  }
}
