package yardloom.planting.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Area;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/** The plants of a yard, kind by kind, apart what stands already and what is planted. */
final class Lots {
  /** What stands already has passed all that is done for young plants only. */
  private static final int OLD = 100;

  private final Map<String, Lot> byKind = new TreeMap<>();
  private final Map<String, LocalDate> planted;

  /**
   * One kind.
   *
   * @param counts how many of them are in each group of care; not all of a kind are trained
   * @param planted the day of planting; empty if it stands already
   */
  record Lot(Plant plant, Area ground, Map<String, Integer> counts, Optional<LocalDate> planted) {
    private Lot plus(Lot other) {
      Map<String, Integer> all = new TreeMap<>(counts);
      other.counts.forEach((group, count) -> all.merge(group, count, Integer::sum));
      return new Lot(plant, ground.plus(other.ground), all, planted);
    }

    /** How many are in any group of a list, {@code fig; pomegranate}. */
    int count(String groups) {
      return Stream.of(groups.split("; ")).mapToInt(g -> counts.getOrDefault(g, 0)).max().orElse(0);
    }

    /** Its own season in a season of the garden, from 1; below 1 before its first. */
    int age(int year, int firstYear) {
      return planted.isEmpty() ? OLD + year : year - firstYear + 1;
    }
  }

  /**
   * @param planted days of planting by kind; what is to be planted and has none is left out
   * @param dripped beds and trees with dripline
   */
  Lots(PlantPlaces places, Map<String, LocalDate> planted, Set<ElementId> dripped) {
    this.planted = planted;
    for (Planting p : places.plantings()) {
      if (!p.at().isEmpty()) {
        add(p.plant(), p.at().size(), p.ground().area(), p.choice().stands(), Set.of());
      }
    }
    for (Planting.Specimen s : places.specimens()) {
      Set<String> more = new HashSet<>();
      if (s.trained().isPresent()) {
        more.add("trained");
      }
      if (dripped.contains(s.tree().id())) {
        more.add("dripped tree");
      }
      add(s.plant(), 1, Area.ZERO, s.tree().stands(), more);
    }
  }

  private void add(Plant plant, int count, Area ground, boolean stands, Set<String> more) {
    LocalDate day = planted.get(plant.name());
    if (!stands && day == null) {
      return;
    }
    Map<String, Integer> counts = new TreeMap<>();
    CareGroups.of(plant).forEach(g -> counts.put(g, count));
    more.forEach(g -> counts.put(g, count));
    Optional<LocalDate> from = stands ? Optional.empty() : Optional.of(day);
    Lot lot = new Lot(plant, ground, counts, from);
    byKind.merge(plant.name() + (stands ? " standing" : ""), lot, Lot::plus);
  }

  Collection<Lot> all() {
    return byKind.values();
  }

  /** The ground of all beds, or of those of annuals. */
  Area ground(boolean annualOnly) {
    List<Lot> lots = new ArrayList<>(byKind.values());
    return lots.stream()
        .filter(l -> !annualOnly || l.plant().season().isAnnual())
        .map(Lot::ground)
        .reduce(Area.ZERO, Area::plus);
  }
}
