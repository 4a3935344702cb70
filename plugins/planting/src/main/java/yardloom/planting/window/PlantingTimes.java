package yardloom.planting.window;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.year.GrowingYear;

/** When each kind may be planted, and as what, by the usual frost dates. */
public final class PlantingTimes implements TableMaker {
  @Override
  public String id() {
    return "planting-times";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.FROST,
        YardFacts.WARM_SEASON,
        YardFacts.CLIMATE,
        YardFacts.PLANTING_WINDOWS,
        TurnPlan.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "When to plant")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("how", "As"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"));
    Optional<GrowingYear> year = GrowingYear.of(facts);
    List<PlantingWindow> windows = facts.all(YardFacts.PLANTING_WINDOWS);
    if (year.isEmpty() || windows.isEmpty()) {
      return table.build();
    }
    Set<String> sources = new TreeSet<>();
    for (PlantingWindow w : windows) {
      for (PlantingWindow.Period p : w.periods()) {
        table.row(Cell.text(w.plant()), Cell.text(p.how()), Cell.of(p.from()), Cell.of(p.until()));
        sources.add(p.from().source().cite());
      }
    }
    for (Turn t : facts.get(TurnPlan.KEY).all()) {
      if (!t.isFirst() && t.inTime()) {
        String after = t.planting().follows().orElseThrow().before().plant().name();
        table.row(
            Cell.text(t.planting().plant().name()),
            Cell.text("after " + after),
            Cell.of(MonthDay.from(t.planted())),
            Cell.of(MonthDay.from(t.latest())));
      }
    }
    boolean waits =
        windows.stream()
            .flatMap(w -> w.periods().stream())
            .anyMatch(p -> year.get().warm().filter(p.from()::equals).isPresent());
    table.note(counted(year.get(), waits) + " Rules: " + String.join("; ", sources) + ".");
    return table.build();
  }

  private static String counted(GrowingYear year, boolean waits) {
    String from = TableFormat.day(year.begins().value());
    String until = TableFormat.day(year.ends().value());
    String source = year.begins().source().cite();
    return year.hasFrost()
        ? (waits
                ? "Tender plants wait until the mean passes 55 °F (13 °C), on "
                    + TableFormat.day(year.warm().orElseThrow().value())
                    + ". "
                : "")
            + "By usual frost from "
            + until
            + " to "
            + from
            + " ("
            + source
            + "): half of the years have frost outside these days."
        : "No frost is usual here: days are counted from the part of the year whose mean is 55 °F"
              + " (13 °C) or more, "
            + from
            + " to "
            + until
            + " ("
            + source
            + "). Cover tender plants in the rare cold night.";
  }
}
