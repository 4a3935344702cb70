package yardloom.planting.bloom;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Chart;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.year.GrowingYear;

/**
 * The days on which each kind of the plan is in bloom, from the last frost of spring, or the first
 * warm day; varieties that the plan calls early or late have rows of their own. Kinds that are
 * picked before they bloom have none. Without a year to count from there is no table.
 */
public final class BloomTable implements TableMaker {
  @Override
  public String id() {
    return "bloom";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(
        YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE, YardFacts.STANDS, TurnPlan.KEY);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.REPORT;
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public List<Chart> charts() {
    return List.of(Chart.of("bloom", "In bloom", Chart.Kind.SPANS, "from", "until"));
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "In bloom")
            .column(Column.text("plant", "Plant"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"));
    List<BloomYear.Kind> kinds = BloomYear.of(plan, facts);
    if (kinds.isEmpty()) {
      return table.build();
    }
    Set<String> sources = new TreeSet<>();
    for (BloomYear.Kind kind : kinds) {
      table.row(
          Cell.text(kind.title()),
          Cell.of(MonthDay.from(kind.from())),
          Cell.of(MonthDay.from(kind.until())));
      sources.add(kind.bloom().source().cite());
    }
    GrowingYear year = GrowingYear.of(facts).orElseThrow();
    return table
        .note(
            "Days are counted from the usual "
                + year.beginning()
                + ", "
                + TableFormat.day(year.begins().value())
                + " ("
                + year.begins().source().cite()
                + "); a warm or cold spring moves them by a week or two. Sources: "
                + String.join("; ", sources)
                + ".")
        .build();
  }
}
