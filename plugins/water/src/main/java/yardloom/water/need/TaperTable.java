package yardloom.water.need;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Volume;
import yardloom.water.need.formula.Taper;

/** What new plants are given in their first 45 days of growth, from their own planting day. */
public final class TaperTable implements TableMaker {
  /** How other tables call it. */
  public static final String TITLE = "Water for new plants";

  private static final String ID = "first-weeks";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.STANDS, YardFacts.PLANTING_DAYS, YardFacts.PHASE_DAYS, MonthlyWeather.KEY);
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(ID, TITLE + ", days 1 to 45")
            .column(Column.text("in", "Bed or tree"))
            .column(Column.text("plants", "Plants"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"))
            .column(Column.text("when", "Water and look"))
            .column(Column.of("waterings", "Times", Measure.COUNT))
            .column(Column.of("each", "Each time, from tap or tank", Measure.SMALL_WATER))
            .column(Column.of("all", "In all", Measure.WATER));
    Optional<MonthlyWeather> weather = facts.find(MonthlyWeather.KEY);
    List<NewPlants> all = NewPlants.of(facts);
    if (weather.isEmpty() || all.isEmpty()) {
      return table.build();
    }
    for (NewPlants plants : all) {
      if (plants.rests()) {
        LocalDate last = plants.grows().minusDays(1);
        table.row(
            dry(
                plants,
                plants.planted(),
                last,
                "water in on the day, then none: it rests; look monthly"));
      }
      for (Taper.Step step : Taper.STEPS) {
        table.row(row(plan, plants, step, weather.get()));
      }
    }
    notes(table);
    followers(facts).ifPresent(table::note);
    DriplineDay.runs(facts).ifPresent(day -> table.note(byCan(day)));
    return table.build();
  }

  private static Cell[] dry(NewPlants plants, LocalDate from, LocalDate until, String what) {
    return new Cell[] {
      Cell.text(plants.in().name()),
      Cell.text(plants.kinds()),
      Cell.of(from),
      Cell.of(until),
      Cell.text(what),
      Cell.BLANK,
      Cell.BLANK,
      Cell.BLANK
    };
  }

  private static Cell[] row(Plan plan, NewPlants plants, Taper.Step step, MonthlyWeather weather) {
    LocalDate from = plants.grows().plusDays(step.from() - 1L);
    LocalDate until = plants.grows().plusDays(step.until() - 1L);
    int month = TaperNeed.month(plants, step);
    if (TaperNeed.rests(plants, step)) {
      return dry(plants, from, until, "none: it rests; look monthly, weekly when leaves come");
    }
    Derived<Volume> each = TaperNeed.each(plan, plants, step, weather);
    return new Cell[] {
      Cell.text(plants.in().name()),
      Cell.text(plants.kinds()),
      Cell.of(from),
      Cell.of(until),
      Cell.text(when(plants, step, weather, month)),
      Cell.of(
          Derived.by("days / days apart", EstablishmentTable.MINNESOTA)
              .from("days", step.days())
              .from("days apart", step.everyDays())
              .gives(step.waterings())),
      Cell.of(each),
      Cell.of(
          Derived.by("times × each time", EstablishmentTable.MINNESOTA)
              .from("times", step.waterings())
              .from("each time", each)
              .gives(each.value().times(step.waterings())))
    };
  }

  /** Where the month usually rains more than new plants take, someone looks and seldom waters. */
  private static String when(NewPlants plants, Taper.Step step, MonthlyWeather weather, int month) {
    String days =
        step.everyDays() == 1
            ? "every day"
            : step.everyDays() == 2 ? "every second day" : "every third day";
    return TaperNeed.isRainedOn(plants, month, weather)
        ? "look " + days + ", water only if dry: rain usually does it then"
        : days;
  }

  /** What follows another on its ground is planted long after the crew has left. */
  private static Optional<String> followers(Facts facts) {
    String kinds =
        facts.all(YardFacts.STANDS).stream()
            .filter(s -> s.follows() && !s.planted().stands())
            .map(Stand::plant)
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return kinds.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Not in the rows: "
                + kinds
                + ", which the household plants later, each after the crop before it; water by the"
                + " same steps from that day, on the days in the care calendar.");
  }

  private static String byCan(LocalDate runs) {
    return "By can or hose until the dripline lies; from "
        + TableFormat.date(runs)
        + " the timer waters beds with dripline.";
  }

  private static void notes(Table.Builder table) {
    table.note(
        "Counted from the day of planting, or from the month in which leaves come where it is"
            + " planted at rest. Each time brings what the days until the next one take, over the"
            + " efficiency of drip; rain is not counted: leave one out after 1/2 in (13 mm) of"
            + " rain.");
    table.note(
        "Look as often as you water: push a finger through the mulch to 2 in (5 cm) beside the"
            + " stem. Wet and cold: wait a day. Dry: water now. Keep mulch a hand's breadth off"
            + " stems. Days of watering after "
            + EstablishmentTable.MINNESOTA.cite()
            + "; then by the tables of the grown garden, new trees by theirs.");
  }
}
