package yardloom.sun.sheet;

import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.FrostDates;
import yardloom.facts.Hardiness;
import yardloom.facts.YardFacts;
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
import yardloom.sun.calc.Freezes;
import yardloom.sun.model.ColdAndWarmth;

/** When frost is usual, early and late, and which hardiness zone the yard lies in. */
public final class FrostTable implements TableMaker {
  @Override
  public String id() {
    return "frost";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.FROST, YardFacts.HARDINESS, ColdAndWarmth.KEY);
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "Frost")
            .column(Column.text("what", "What"))
            .column(Column.of("limit", "At or below", Measure.TEMPERATURE))
            .column(Column.text("tenth", "By then in 1 year of 10"))
            .column(Column.text("half", "In half of the years"))
            .column(Column.text("most", "In 9 of 10"));
    Optional<FrostDates> frost = facts.find(YardFacts.FROST);
    Optional<ColdAndWarmth> record = facts.find(ColdAndWarmth.KEY);
    frost.ifPresent(f -> usual(table, f));
    record.ifPresent(r -> r.freezes().forEach(f -> rows(table, f)));
    facts.find(YardFacts.HARDINESS).ifPresent(h -> zone(table, h));
    record.ifPresent(
        r ->
            table.note(
                "Weather record: "
                    + r.source()
                    + ", "
                    + r.years()
                    + " complete years. Low ground and yards away from town freeze later in spring"
                    + " and earlier in fall than a station does."));
    return table.build();
  }

  private static void usual(Table.Builder table, FrostDates frost) {
    row(table, "last frost of spring, used in this plan", frost, frost.lastOfSpring());
    row(table, "first frost of fall, used in this plan", frost, frost.firstOfFall());
    table.note("Frost dates used: " + frost.lastOfSpring().source().cite() + ".");
  }

  private static void row(
      Table.Builder table, String what, FrostDates frost, Derived<MonthDay> day) {
    table.row(
        Cell.text(what),
        Cell.of(frost.limit()),
        Cell.BLANK,
        Cell.of(day.map(FrostTable::text)),
        Cell.BLANK);
  }

  private static void rows(Table.Builder table, ColdAndWarmth.FreezeRow row) {
    Temperature limit = row.limit();
    String name = Choices.text(Freezes.strength((int) Math.rint(limit.fahrenheit()))) + " freeze";
    line(table, "last " + name + " of spring", limit, row.spring());
    line(table, "first " + name + " of fall", limit, row.fall());
  }

  private static void line(
      Table.Builder table, String what, Temperature limit, List<Optional<MonthDay>> days) {
    table.row(
        Cell.text(what),
        Cell.of(limit),
        Cell.text(days.get(0).map(FrostTable::text).orElse("none")),
        Cell.text(days.get(1).map(FrostTable::text).orElse("none")),
        Cell.text(days.get(2).map(FrostTable::text).orElse("none")));
  }

  private static void zone(Table.Builder table, Hardiness zone) {
    table.row(
        Cell.text("hardiness zone " + zone.text() + ", mean lowest of a year"),
        zone.meanLowest().map(Cell::of).orElse(Cell.BLANK),
        Cell.BLANK,
        Cell.BLANK,
        Cell.BLANK);
    table.note("Hardiness zone: " + zone.source().cite() + ".");
  }

  static String text(MonthDay day) {
    return day.getDayOfMonth()
        + " "
        + day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
  }
}
