package yardloom.water.drip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.table.TableMaker;

/** Where whoever lays dripline puts its rows, and how they lie to the plants. */
public final class RowTable implements TableMaker {
  private static final int MOST_NOTES = 8;

  @Override
  public String id() {
    return "drip-rows";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(DripRun.KEY, YardFacts.SOIL, YardFacts.STANDS);
  }

  @Override
  public OnPaper onPaper() {
    return OnPaper.IF_ROOM;
  }

  @Override
  public Table make(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled(id(), "How the rows of dripline lie")
            .column(Column.text("bed", "Bed or tree"))
            .column(Column.of("first", "First from edge or trunk", Measure.DEPTH))
            .column(Column.of("apart", "Then every", Measure.DEPTH))
            .column(Column.text("rows", "Or rows beside plants"))
            .column(Column.of("outlets", "Outlets every", Measure.DEPTH))
            .column(Column.of("reach", "Wets to each side", Measure.DEPTH))
            .column(Column.text("plant", "Plant farthest from a row"))
            .column(Column.of("farthest", "So far", Measure.DEPTH));
    List<DripRun> runs = facts.all(DripRun.KEY);
    alike(plan, facts)
        .forEach((printed, group) -> table.row(row(printed.beside(), group, runs.size())));
    if (!runs.isEmpty()) {
      table.note(
          "Rows share the bed evenly along its long side, or run along its outline where that is"
              + " round. A row that would lie under plants is laid "
              + RowShift.hand(plan)
              + " beside them, by tape from the side named, so far to the middle of each row; where"
              + " there is no room for that, lead it round each stem by as much. A root ball"
              + " farther from a row than an outlet wets is watered by hand until its roots have"
              + " grown there.");
    }
    return table.build();
  }

  /** The same in sentences, for the notes on laying it; left to the table where there are many. */
  public static List<String> notes(Plan plan, Facts facts) {
    Map<Printed, List<Laid>> alike = alike(plan, facts);
    if (alike.size() > MOST_NOTES) {
      return List.of("Where the rows of each bed lie: see the table of it in the report.");
    }
    List<String> notes = new ArrayList<>();
    alike.forEach(
        (printed, group) ->
            notes.add(
                names(runs(group), facts.all(DripRun.KEY).size())
                    + ": "
                    + where(printed)
                    + ", "
                    + printed.outlets()
                    + "."));
    return notes;
  }

  private static String where(Printed printed) {
    return printed.beside().isEmpty()
        ? "first row "
            + printed.first()
            + (printed.apart().isEmpty() ? "" : ", the next every " + printed.apart())
        : "rows " + printed.beside();
  }

  /** Whose rows lie under stems for want of room beside them, and what to do; else empty. */
  public static Optional<String> stems(Plan plan, Facts facts) {
    List<DripRun> runs = facts.all(DripRun.KEY);
    List<DripRun> under = runs.stream().filter(run -> RowShift.isUnderPlants(run, facts)).toList();
    return under.isEmpty()
        ? Optional.empty()
        : Optional.of(
            names(under, runs.size())
                + ": where a row meets a stem, lead it "
                + RowShift.hand(plan)
                + " beside it.");
  }

  private static Map<Printed, List<Laid>> alike(Plan plan, Facts facts) {
    TableFormat format = TableFormat.of(plan.info());
    Map<Printed, List<Laid>> alike = new LinkedHashMap<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      Laid laid = new Laid(run, RowPlaces.of(plan, run, facts));
      alike.computeIfAbsent(Printed.of(laid, format), key -> new ArrayList<>()).add(laid);
    }
    return alike;
  }

  private static List<DripRun> runs(List<Laid> group) {
    return group.stream().map(Laid::run).toList();
  }

  private static String names(List<DripRun> group, int all) {
    return group.size() == all && all > 1
        ? "all"
        : group.stream().map(run -> run.bed().name()).collect(Collectors.joining(", "));
  }

  /** The rows of one bed or tree. */
  private record Laid(DripRun run, RowPlaces places) {}

  /**
   * What whoever lays rows reads; where this is the same, one line says it for all.
   *
   * @param first with what it is measured from
   * @param apart empty with a single row
   * @param outlets how far apart, or where single emitters stand
   * @param beside {@code 8.0, 21.0, 40.0 in from the west side}; empty where rows share the bed
   *     evenly
   */
  private record Printed(String first, String apart, String beside, String outlets, String reach) {
    static Printed of(Laid laid, TableFormat format) {
      RowPlaces places = laid.places();
      return new Printed(
          format.withUnit(Measure.DEPTH, places.first())
              + (laid.run().bed().kind() == ElementKind.TREE
                  ? " from the trunk"
                  : " from the edge"),
          places.apart().map(apart -> format.withUnit(Measure.DEPTH, apart)).orElse(""),
          RowShift.uneven(laid.run()).map(from -> byTape(from, format)).orElse(""),
          outlets(laid.run(), format),
          format.withUnit(Measure.DEPTH, places.reach().value()));
    }

    /** Emitters stand by the plants: a mean distance along the tube would mislead. */
    private static String outlets(DripRun run, TableFormat format) {
      if (!run.choice().isSingle()) {
        return "outlets every " + format.withUnit(Measure.DEPTH, run.choice().spacing());
      }
      int count = run.totals().outlets().value();
      return (count == 1 ? "1 emitter" : count + " emitters")
          + (run.bed().kind() == ElementKind.TREE
              ? " spread evenly round the tree"
              : " where the tube passes the plants");
    }

    private static String byTape(RowShift.FromSide from, TableFormat format) {
      Column depth = Column.of("row", "Row", Measure.DEPTH);
      int last = from.rows().size() - 1;
      StringBuilder text = new StringBuilder();
      from.rows()
          .subList(0, last)
          .forEach(row -> text.append(format.text(depth, Cell.of(row))).append(", "));
      return text.append(format.withUnit(Measure.DEPTH, from.rows().get(last)))
          .append(" from ")
          .append(from.side())
          .toString();
    }
  }

  private static Cell[] row(String beside, List<Laid> group, int all) {
    RowPlaces first = group.get(0).places();
    Optional<RowPlaces.Far> farthest =
        group.stream()
            .flatMap(laid -> laid.places().farthest().stream())
            .max(Comparator.comparing(RowPlaces.Far::from).thenComparing(RowPlaces.Far::plant));
    return new Cell[] {
      Cell.text(names(runs(group), all)),
      Cell.of(first.first()),
      first.apart().filter(a -> beside.isEmpty()).map(Cell::of).orElse(Cell.BLANK),
      Cell.text(beside),
      group.get(0).run().choice().isSingle()
          ? Cell.text("by the plants")
          : Cell.of(group.get(0).run().choice().spacing()),
      Cell.of(first.reach()),
      farthest.map(f -> Cell.text(f.plant())).orElse(Cell.BLANK),
      farthest.map(f -> Cell.of(f.from())).orElse(Cell.BLANK)
    };
  }
}
