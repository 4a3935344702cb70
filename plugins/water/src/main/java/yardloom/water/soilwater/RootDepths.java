package yardloom.water.soilwater;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.Stand.Roots;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;

/**
 * How deep plants draw water: as the table of their crop says, else as their class does, by which
 * gardens are watered where no crop's figure is known.
 */
public final class RootDepths {
  private static final Map<String, Roots> CLASSES = classes();

  private RootDepths() {}

  private static Map<String, Roots> classes() {
    Map<String, Roots> classes = new TreeMap<>();
    DataTable.shipped(RootDepths.class, "root-classes.csv")
        .rows()
        .forEach(
            r ->
                classes.put(
                    r.text("class"),
                    new Roots(
                        Length.feet(r.number("depth_ft")),
                        r.number("easy_share"),
                        r.source(),
                        false)));
    return classes;
  }

  /** The roots of a full-grown plant. */
  public static Roots of(Stand stand) {
    return stand.thirst().roots().orElseGet(() -> CLASSES.get(classOf(stand)));
  }

  private static String classOf(Stand stand) {
    if (stand.in().kind() == ElementKind.TREE) {
      return "trees";
    }
    return stand.planted().phase() == WorkPhase.TREES ? "shrubs" : "small plants";
  }

  /** Whose depth is that of their class, and which it is; empty where there are none. */
  public static Optional<String> note(Plan plan, Collection<Stand> stands) {
    TableFormat format = TableFormat.of(plan.info());
    Map<String, Roots> taken = new TreeMap<>();
    List<Stand> unknown = stands.stream().filter(s -> s.thirst().roots().isEmpty()).toList();
    unknown.forEach(s -> taken.put(classOf(s), of(s)));
    if (taken.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "FAO-56 has no root depth for "
            + unknown.stream()
                .map(Stand::plant)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "))
            + ": that of their class is taken, "
            + taken.entrySet().stream()
                .map(e -> e.getKey() + " " + format.withUnit(Measure.DEPTH, e.getValue().depth()))
                .collect(Collectors.joining(", "))
            + " ("
            + taken.values().iterator().next().source().cite()
            + ").");
  }
}
