package yardloom.planting.care;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.Plant.Form;
import yardloom.planting.catalogue.Plant.Season;
import yardloom.planting.harvest.HarvestSeason;
import yardloom.planting.traits.Growth;

/**
 * Which care a kind gets: by its genus, or species where that differs, and by how it grows. A kind
 * added to the catalogue falls into its relatives' group by itself.
 */
public final class CareGroups {
  /** What is cleared in fall. */
  static final String ANNUAL = "annual";

  /** What is sown in rows and picked for a while. */
  static final String SOWN = "sown";

  private static final Map<String, String> BY_NAME = read();
  private static final Set<String> GNAWED = gnawed();
  private static final Set<String> KEEP_THEIR_TOPS = Set.of("asparagus", "strawberry");

  private CareGroups() {}

  /** Whether it is held back with a spade each year, as it overruns what stands beside it. */
  public static boolean isHeldBack(Plant plant) {
    return of(plant).contains("runner");
  }

  /** Whether a group is one of those that are cleared when they are over. */
  static boolean isCleared(String group) {
    return group.equals(ANNUAL) || group.equals(SOWN);
  }

  /** All groups of a kind, in no order. */
  static Set<String> of(Plant plant) {
    Set<String> groups = new HashSet<>();
    String related = related(plant.botanical());
    if (!related.isEmpty()) {
      groups.add(related);
    }
    if (plant.growth().form() == Form.TREE && GNAWED.contains(plant.genus())) {
      groups.add("gnawed bark");
    }
    if (plant.growth().window().equals("tender woody")) {
      groups.add("tender woody");
      if (plant.growth().form() == Form.TREE) {
        groups.add("tender tree");
      }
    }
    if (plant.growth().season().isAnnual() && !related.endsWith("cover")) {
      cleared(plant).ifPresent(groups::add);
    }
    if (plant.growth().form() == Form.HERB
        && plant.growth().season() == Season.DECIDUOUS
        && !KEEP_THEIR_TOPS.contains(related)) {
      groups.add("herb");
    }
    return groups;
  }

  /** By how an annual is cleared: roots are pulled to be eaten, rows are cut when they are over. */
  private static Optional<String> cleared(Plant plant) {
    if (!plant.growth().start().isInDrills() || HarvestSeason.of(plant).isEmpty()) {
      return Optional.of(ANNUAL);
    }
    return Growth.roles(plant).contains("root crop") ? Optional.empty() : Optional.of(SOWN);
  }

  /** The group of the longest name that the botanical name begins with; empty if none. */
  private static String related(String botanical) {
    String best = "";
    for (String name : BY_NAME.keySet()) {
      if ((botanical + " ").startsWith(name + " ") && name.length() > best.length()) {
        best = name;
      }
    }
    return best.isEmpty() ? "" : BY_NAME.get(best);
  }

  /** Genera of trees whose young bark rabbits and mice eat in winter. */
  private static Set<String> gnawed() {
    Set<String> genera = new HashSet<>();
    for (DataRow row : DataTable.shipped(CareGroups.class, "gnawed-bark.csv").rows()) {
      CareRow.sources().cited(row, "source");
      genera.add(row.text("botanical"));
    }
    return genera;
  }

  private static Map<String, String> read() {
    Map<String, String> groups = new TreeMap<>();
    for (DataRow row : DataTable.shipped(CareGroups.class, "care-groups.csv").rows()) {
      groups.put(row.text("botanical"), row.text("group"));
    }
    return groups;
  }
}
