package yardloom.water.drip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
  private static final int MOST_NOTES = 4;

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
            .column(Column.of("outlets", "Outlets every", Measure.DEPTH))
            .column(Column.of("reach", "Wets to each side", Measure.DEPTH))
            .column(Column.text("plant", "Plant farthest from a row"))
            .column(Column.of("farthest", "So far", Measure.DEPTH));
    List<DripRun> runs = facts.all(DripRun.KEY);
    alike(plan, facts).values().forEach(group -> table.row(row(group, runs.size())));
    if (!runs.isEmpty()) {
      table.note(
          "Rows lie by the bed, not by the plants: along its long side, or along its outline where"
              + " that is round. Set plants beside a row, not on it. A root ball farther from a row than"
              + " an outlet wets is watered by hand until its roots have grown there.");
    }
    return table.build();
  }

  /** The same in sentences, for the notes on laying it; left to the table where there are many. */
  public static List<String> notes(Plan plan, Facts facts) {
    Map<List<String>, List<Laid>> alike = alike(plan, facts);
    if (alike.size() > MOST_NOTES) {
      return List.of("Where the rows of each bed lie: see the table of it in the report.");
    }
    List<String> notes = new ArrayList<>();
    alike.forEach(
        (printed, group) ->
            notes.add(
                names(group, facts.all(DripRun.KEY).size())
                    + ": first row "
                    + printed.get(0)
                    + (group.get(0).run().bed().kind() == ElementKind.TREE
                        ? " from the trunk"
                        : " from the edge")
                    + (printed.get(1).isEmpty() ? "" : ", the next every " + printed.get(1))
                    + ", outlets every "
                    + printed.get(2)
                    + "."));
    return notes;
  }

  private static Map<List<String>, List<Laid>> alike(Plan plan, Facts facts) {
    TableFormat format = new TableFormat(plan.info().units(), plan.info().currency());
    Map<List<String>, List<Laid>> alike = new LinkedHashMap<>();
    for (DripRun run : facts.all(DripRun.KEY)) {
      Laid laid = new Laid(run, RowPlaces.of(plan, run, facts));
      alike.computeIfAbsent(laid.printed(format), key -> new ArrayList<>()).add(laid);
    }
    return alike;
  }

  private static String names(List<Laid> group, int all) {
    return group.size() == all && all > 1
        ? "all"
        : group.stream().map(laid -> laid.run().bed().name()).collect(Collectors.joining(", "));
  }

  /** The rows of one bed or tree. */
  private record Laid(DripRun run, RowPlaces places) {
    /** What whoever lays it reads; where this is the same, one line says it for all. */
    List<String> printed(TableFormat format) {
      return Stream.of(
              Optional.of(places.first()),
              places.apart(),
              Optional.of(run.choice().spacing()),
              Optional.of(places.reach().value()))
          .map(l -> l.map(length -> format.withUnit(Measure.DEPTH, length)).orElse(""))
          .toList();
    }
  }

  private static Cell[] row(List<Laid> group, int all) {
    RowPlaces first = group.get(0).places();
    Optional<RowPlaces.Far> farthest =
        group.stream()
            .flatMap(laid -> laid.places().farthest().stream())
            .max(Comparator.comparing(RowPlaces.Far::from).thenComparing(RowPlaces.Far::plant));
    return new Cell[] {
      Cell.text(names(group, all)),
      Cell.of(first.first()),
      first.apart().map(Cell::of).orElse(Cell.BLANK),
      Cell.of(group.get(0).run().choice().spacing()),
      Cell.of(first.reach()),
      farthest.map(f -> Cell.text(f.plant())).orElse(Cell.BLANK),
      farthest.map(f -> Cell.of(f.from())).orElse(Cell.BLANK)
    };
  }
}
