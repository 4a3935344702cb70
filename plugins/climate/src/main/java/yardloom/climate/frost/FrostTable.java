package yardloom.climate.frost;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.frost.formula.Freezes;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.facts.WarmSeason;
import yardloom.facts.YardFacts;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Choices;

/**
 * When frost is usual, or what stands for it where it is no rule, and which hardiness zone the yard
 * lies in; early and late dates where the plan gives a weather record.
 */
public final class FrostTable implements TableMaker {
  private static final int FEW_YEARS = 10;

  @Override
  public String id() {
    return "frost";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.HARDINESS, ColdAndWarmth.KEY);
  }

  @Override
  public Set<SheetPage> uses() {
    return Set.of(SheetPage.SUN);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Optional<ColdAndWarmth> record = facts.find(ColdAndWarmth.KEY);
    Rows rows = new Rows(Table.titled(id(), "Frost and hardiness"), record.isPresent());
    facts
        .find(YardFacts.FROST)
        .ifPresentOrElse(rows::used, () -> facts.find(YardFacts.WARM_SEASON).ifPresent(rows::warm));
    record.ifPresent(r -> r.freezes().forEach(rows::freeze));
    facts.find(YardFacts.HARDINESS).ifPresent(rows::zone);
    record.ifPresent(
        r ->
            rows.table.note(
                "Weather record: "
                    + r.source()
                    + ", "
                    + r.years()
                    + " complete years"
                    + (r.years() < FEW_YEARS
                        ? ", too few for the 1 in 10. Low ground"
                        : ". Low ground")
                    + " and yards away from town freeze later in spring"
                    + " and earlier in fall than a station does."));
    return rows.table.build();
  }

  /** Fills the table; without a record it has no columns for early and late dates. */
  private record Rows(Table.Builder table, boolean spread) {
    Rows {
      table
          .column(Column.text("what", "What"))
          .column(Column.of("limit", "At or below", Measure.TEMPERATURE));
      if (spread) {
        table.column(Column.text("tenth", "1 of 10 years by"));
      }
      table.column(Column.text("half", "Half of the years by"));
      if (spread) {
        table.column(Column.text("most", "9 of 10 years by"));
      }
    }

    void used(FrostDates frost) {
      usual("last frost of spring, used in this plan", frost.limit(), frost.lastOfSpring());
      usual("first frost of fall, used in this plan", frost.limit(), frost.firstOfFall());
      table.note("Frost dates used: " + frost.lastOfSpring().source().cite() + ".");
    }

    void warm(WarmSeason warm) {
      mean("first warm day, used in this plan for the last frost", warm.begins());
      mean("last warm day, used in this plan for the first frost", warm.ends());
      table.note(
          "Frost is no rule here: days are counted from those on which the mean passes what tender"
              + " plants ask of the ground ("
              + warm.begins().source().cite()
              + ").");
    }

    private void mean(String what, Derived<MonthDay> day) {
      add(what, Cell.BLANK, Cell.BLANK, Cell.of(day), Cell.BLANK);
    }

    private void usual(String what, Temperature limit, Derived<MonthDay> day) {
      add(what, Cell.of(limit), Cell.BLANK, Cell.of(day), Cell.BLANK);
    }

    void freeze(ColdAndWarmth.FreezeRow row) {
      int fahrenheit = (int) Math.rint(row.limit().fahrenheit());
      String name = Choices.text(Freezes.strength(fahrenheit)) + " freeze";
      dates("last " + name + " of spring", row.limit(), row.spring());
      dates("first " + name + " of fall", row.limit(), row.fall());
    }

    private void dates(String what, Temperature limit, List<Optional<MonthDay>> days) {
      add(what, Cell.of(limit), day(days.get(0)), day(days.get(1)), day(days.get(2)));
    }

    private static Cell day(Optional<MonthDay> day) {
      return day.map(Cell::of).orElseGet(() -> Cell.text("none"));
    }

    void zone(Hardiness zone) {
      boolean known = zone.meanLowest().isPresent();
      add(
          "hardiness zone " + zone.text() + (known ? ", mean lowest of a year" : ""),
          zone.meanLowest().map(Cell::of).orElse(Cell.BLANK),
          Cell.BLANK,
          Cell.BLANK,
          Cell.BLANK);
      table.note("Hardiness zone: " + zone.source().cite() + ".");
    }

    private void add(String what, Cell limit, Cell tenth, Cell half, Cell most) {
      if (spread) {
        table.row(Cell.text(what), limit, tenth, half, most);
      } else {
        table.row(Cell.text(what), limit, half);
      }
    }
  }
}
