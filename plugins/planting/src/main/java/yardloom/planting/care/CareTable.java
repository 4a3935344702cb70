package yardloom.planting.care;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Audience;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;

/** What is done for the plants, from the days of planting on, act by act. */
public final class CareTable implements TableMaker {
  @Override
  public String id() {
    return "care";
  }

  @Override
  public Optional<Audience> audience() {
    return Optional.of(Audience.HOUSEHOLD);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(CareAct.KEY);
  }

  @Override
  public boolean isByPart() {
    return true;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    return table(facts, true);
  }

  /** Without how each is done, which the report and the calendar file say. */
  @Override
  public Table forSheet(Plan plan, Facts facts, Table made) {
    return table(facts, false);
  }

  private Table table(Facts facts, boolean how) {
    Table.Builder table =
        Table.titled(id(), "Care through the seasons")
            .column(Column.text("what", "What"))
            .column(Column.text("plants", "For"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"))
            .column(Column.text("seasons", "Seasons"))
            .column(Column.of("hours", "Hours", Measure.HOURS));
    if (how) {
      table.column(Column.text("how", "How"));
    }
    List<CareAct> acts =
        facts.all(CareAct.KEY).stream()
            // On a sheet the harvest has its own table.
            .filter(a -> how || !a.isPicking())
            .toList();
    List<CareAct> dated = acts.stream().filter(CareTable::isOnce).toList();
    if (!dated.isEmpty()) {
      table.heading("Once, from the days of planting");
      dated.forEach(
          a ->
              table.row(
                  row(
                      how,
                      a,
                      Cell.of(a.when().from()),
                      Cell.of(a.when().until()),
                      "" + a.when().season())));
    }
    Map<String, List<CareAct>> yearly = yearly(acts);
    if (!yearly.isEmpty()) {
      table.heading("By the season");
    }
    for (List<CareAct> same : yearly.values()) {
      CareAct last = same.get(same.size() - 1);
      boolean all = last.when().isAllYear();
      Cell from = all ? Cell.text("all year") : Cell.of(MonthDay.from(last.when().from()));
      Cell until = all ? Cell.BLANK : Cell.of(MonthDay.from(last.when().until()));
      table.row(row(how, last, from, until, seasons(same)));
    }
    if (!acts.isEmpty()) {
      notes(table, acts, how);
    }
    return table.build();
  }

  private static boolean isOnce(CareAct act) {
    return act.when().every() == 0;
  }

  /** The acts that come again, in the order of the year, each with its seasons. */
  private static Map<String, List<CareAct>> yearly(List<CareAct> acts) {
    Map<String, List<CareAct>> byKey = new LinkedHashMap<>();
    acts.stream()
        .filter(a -> !isOnce(a))
        .sorted(
            java.util.Comparator.comparing((CareAct a) -> a.when().ends())
                .thenComparing(CareAct::yearlyKey)
                .thenComparing((CareAct a) -> a.when().season())
                .thenComparing(p -> p.when().from()))
        .forEach(a -> byKey.computeIfAbsent(a.yearlyKey(), k -> new ArrayList<>()).add(a));
    return byKey;
  }

  private static String seasons(List<CareAct> same) {
    TreeSet<Integer> seasons = new TreeSet<>();
    same.forEach(a -> seasons.add(a.when().season()));
    int every = same.get(0).when().every();
    if (every > 1) {
      return "every " + every + " seasons";
    }
    boolean grown = seasons.contains(CareAct.GROWN);
    int first = seasons.first();
    if (grown && first == CareAct.GROWN) {
      return "once grown";
    }
    if (grown) {
      return first == 1 ? "each" : "from " + first + " on";
    }
    return first == seasons.last() ? "" + first : first + " to " + seasons.last();
  }

  private static List<Cell> row(boolean how, CareAct act, Cell from, Cell until, String seasons) {
    List<Cell> cells =
        new ArrayList<>(
            List.of(
                Cell.text(act.task().what()),
                Cell.text(String.join(", ", act.plants())),
                from,
                until,
                Cell.text(seasons),
                act.hours().map(Cell::of).orElse(Cell.BLANK)));
    if (how) {
      cells.add(Cell.text(act.task().how()));
    }
    return cells;
  }

  private static void notes(Table.Builder table, List<CareAct> acts, boolean sourced) {
    LocalDate start = acts.stream().map(p -> p.when().from()).min(LocalDate::compareTo).get();
    Set<String> sources = new TreeSet<>();
    acts.forEach(a -> sources.add(a.task().source().cite()));
    table.note(
        "Season 1 is the first that leaves new plants two months to grow; days shift with the"
            + " weather of the year. The first days of all fall on "
            + yardloom.kernel.table.TableFormat.date(start)
            + ". Hours are for each time; those of planting stand with the work; those of picking"
            + " are not counted.");
    table.note(
        sourced
            ? "By: " + String.join("; ", sources) + "."
            : "How each is done, and who says so, stands in the report and in the calendar file.");
  }
}
