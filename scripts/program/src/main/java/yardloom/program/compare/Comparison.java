package yardloom.program.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.program.output.RowNames;

/**
 * What is other in {@code now} than in {@code old}. Laws: nothing is other in a plan than in
 * itself; with old and new exchanged all changes are the mirrored ones.
 */
public final class Comparison {
  static final String ORDERS = "materials-orders-by-phase";
  static final String LABOUR = "materials-labour";
  static final String COST = "materials-cost";
  private static final String FINDINGS = "findings";

  private final Snapshot old;
  private final Snapshot now;
  private final List<ThingChange> things;
  private final List<FigureChange> figures;

  /**
   * Compares.
   *
   * @throws PlanException (CONTRADICTION) if the plans show different units
   */
  public Comparison(Snapshot old, Snapshot now) {
    if (old.info().units() != now.info().units()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "one plan shows US units and the other metric ones, so their figures cannot be compared;"
              + " give both the same units");
    }
    this.old = old;
    this.now = now;
    this.things = things(old.things(), now.things());
    this.figures = figures(Renames.in(old.tables(), things), now.tables());
  }

  public Snapshot old() {
    return old;
  }

  public Snapshot now() {
    return now;
  }

  /** Whether nothing is other. */
  public boolean isEmpty() {
    return things.isEmpty() && figures.isEmpty() && gone().isEmpty() && come().isEmpty();
  }

  /** Whether a finding that is an error came. */
  public boolean bringsErrors() {
    return come().stream().anyMatch(f -> f.severity().equals("error"));
  }

  List<ThingChange> things() {
    return things;
  }

  /** The cells that show something else, table by table. */
  List<FigureChange> figures() {
    return figures;
  }

  /** The changes of one column of one table. */
  List<FigureChange> figures(String table, String column) {
    return figures.stream()
        .filter(f -> f.table().id().equals(table) && f.column().id().equals(column))
        .toList();
  }

  /** The findings that old has and new has not. */
  List<Snapshot.Remark> gone() {
    return without(old.findings(), now.findings());
  }

  /** The findings that new has and old has not. */
  List<Snapshot.Remark> come() {
    return without(now.findings(), old.findings());
  }

  private static List<Snapshot.Remark> without(
      List<Snapshot.Remark> these, List<Snapshot.Remark> those) {
    List<Snapshot.Remark> rest = new ArrayList<>(these);
    those.forEach(rest::remove);
    return rest;
  }

  private static List<ThingChange> things(List<Thing> old, List<Thing> now) {
    Map<String, Thing> was = byId(old, Thing::id);
    Map<String, Thing> is = byId(now, Thing::id);
    List<ThingChange> changes = new ArrayList<>();
    was.forEach(
        (id, thing) -> {
          if (is.containsKey(id)) {
            ThingChange.between(thing, is.get(id)).ifPresent(changes::add);
          }
        });
    List<Thing> removed = was.values().stream().filter(t -> !is.containsKey(t.id())).toList();
    List<Thing> added =
        new ArrayList<>(is.values().stream().filter(t -> !was.containsKey(t.id())).toList());
    for (Thing thing : removed) {
      // Several in one place find each other in the order of their names, from either side.
      Optional<Thing> renamed =
          added.stream().filter(a -> ThingChange.isSame(thing, a)).findFirst();
      renamed.ifPresent(added::remove);
      ThingChange.How how = renamed.isPresent() ? ThingChange.How.RENAMED : ThingChange.How.REMOVED;
      changes.add(new ThingChange(how, Optional.of(thing), renamed));
    }
    added.forEach(
        a -> changes.add(new ThingChange(ThingChange.How.ADDED, Optional.empty(), Optional.of(a))));
    changes.sort(Comparator.comparing(ThingChange::how).thenComparing(c -> c.thing().id()));
    return List.copyOf(changes);
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    Map<String, T> byId = new TreeMap<>();
    all.forEach(t -> byId.put(id.apply(t), t));
    return byId;
  }

  private static List<FigureChange> figures(List<ResultGrid> old, List<ResultGrid> now) {
    Map<String, ResultGrid> was = byId(old, ResultGrid::id);
    Map<String, ResultGrid> is = byId(now, ResultGrid::id);
    Set<String> ids = new TreeSet<>(was.keySet());
    ids.addAll(is.keySet());
    ids.remove(FINDINGS);
    List<FigureChange> changes = new ArrayList<>();
    for (String id : ids) {
      ResultGrid any = is.getOrDefault(id, was.get(id));
      ResultGrid none = new ResultGrid(id, any.title(), any.columns(), List.of(), List.of());
      compare(was.getOrDefault(id, none), is.getOrDefault(id, none), changes);
    }
    return List.copyOf(changes);
  }

  private static void compare(ResultGrid old, ResultGrid now, List<FigureChange> changes) {
    List<List<String>> names = RowNames.ofBoth(old.naming(), now.naming());
    Set<String> rows = new LinkedHashSet<>(names.get(1));
    rows.addAll(names.get(0));
    Set<ResultGrid.Head> columns = new LinkedHashSet<>(now.columns());
    columns.addAll(old.columns());
    for (String row : rows) {
      int oldRow = names.get(0).indexOf(row);
      int newRow = names.get(1).indexOf(row);
      for (ResultGrid.Head column : columns) {
        String was = old.shown(oldRow, column.id());
        String is = now.shown(newRow, column.id());
        boolean isName = column.equals(now.columns().get(0));
        if (!was.equals(is) && !isName) {
          changes.add(new FigureChange(now, row, column, was, is));
        }
      }
    }
  }

  /** A sum before and after. */
  record Sums(BigDecimal old, BigDecimal now) {}

  /** Likely hours by phase where they are other, as the shown hours of the tasks add up. */
  Map<String, Sums> hoursByPhase() {
    Map<String, Sums> sums = new LinkedHashMap<>();
    Map<String, BigDecimal> was = hours(old);
    Map<String, BigDecimal> is = hours(now);
    Set<String> phases = new LinkedHashSet<>(is.keySet());
    phases.addAll(was.keySet());
    for (String phase : phases) {
      BigDecimal a = was.getOrDefault(phase, BigDecimal.ZERO);
      BigDecimal b = is.getOrDefault(phase, BigDecimal.ZERO);
      if (a.compareTo(b) != 0) {
        sums.put(phase, new Sums(a, b));
      }
    }
    return sums;
  }

  private static Map<String, BigDecimal> hours(Snapshot plan) {
    Map<String, BigDecimal> hours = new LinkedHashMap<>();
    plan.tables().stream()
        .filter(t -> t.id().equals(LABOUR))
        .forEach(
            t -> {
              for (int row = 0; row < t.cells().size(); row++) {
                String phase = t.shown(row, "phase");
                String key = phase.isEmpty() ? t.cells().get(row).get(0) : phase;
                ShownNumber.read(t.shown(row, "likely"))
                    .ifPresent(h -> hours.merge(key, h.value(), BigDecimal::add));
              }
            });
    return hours;
  }
}
