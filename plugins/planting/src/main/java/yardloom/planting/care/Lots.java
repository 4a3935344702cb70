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
import java.util.function.IntUnaryOperator;
import yardloom.kernel.unit.Area;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;

/** The plants of a yard, kind by kind, apart what stands already and what is planted. */
final class Lots {
  /** What stands already has passed all that is done for young plants only. */
  private static final int OLD = 100;

  private final Map<String, Lot> byKind = new TreeMap<>();
  private final Map<String, LocalDate> planted;

  /**
   * One kind.
   *
   * @param counts how many stand in a season of the garden: fewer once they are thinned
   * @param planted the day of planting; empty if it stands already
   */
  record Lot(
      Plant plant,
      IntUnaryOperator counts,
      Area ground,
      Set<String> groups,
      Optional<LocalDate> planted) {
    private Lot plus(Lot other) {
      Set<String> all = new HashSet<>(groups);
      all.addAll(other.groups);
      IntUnaryOperator both = n -> count(n) + other.count(n);
      return new Lot(plant, both, ground.plus(other.ground), all, planted);
    }

    int count(int season) {
      return counts.applyAsInt(season);
    }

    /** Its own season in a season of the garden, from 1; below 1 before its first. */
    int age(int year, int firstYear) {
      return planted.isEmpty() ? OLD + year : year - firstYear + 1;
    }
  }

  /**
   * @param planted days of planting by kind; what is to be planted and has none is left out
   */
  Lots(PlantPlaces places, Map<String, LocalDate> planted) {
    this.planted = planted;
    for (Planting p : places.plantings()) {
      if (!p.at().isEmpty()) {
        add(p.plant(), counts(p), p.ground().area(), p.choice().stands(), Set.of());
      }
    }
    for (Planting.Specimen s : places.specimens()) {
      Set<String> more = s.trained().isPresent() ? Set.of("trained") : Set.of();
      add(s.plant(), n -> 1, Area.ZERO, s.tree().stands(), more);
    }
  }

  /** All of a planting, and those that stay from the season on before which it is thinned. */
  private static IntUnaryOperator counts(Planting p) {
    int all = p.at().size();
    Optional<Thinned> thinned = Thinning.of(p);
    if (thinned.isEmpty()) {
      return n -> all;
    }
    int stay = Thinning.kept(p, thinned.get()).size();
    return n -> n < thinned.get().season() ? all : stay;
  }

  private void add(
      Plant plant, IntUnaryOperator counts, Area ground, boolean stands, Set<String> more) {
    LocalDate day = planted.get(plant.name());
    if (!stands && day == null) {
      return;
    }
    Set<String> groups = new HashSet<>(CareGroups.of(plant));
    groups.addAll(more);
    Optional<LocalDate> from = stands ? Optional.empty() : Optional.of(day);
    Lot lot = new Lot(plant, counts, ground, groups, from);
    byKind.merge(plant.name() + (stands ? " standing" : ""), lot, Lot::plus);
  }

  Collection<Lot> all() {
    return byKind.values();
  }

  /** Those of a group. */
  List<Lot> of(String group) {
    return byKind.values().stream().filter(l -> l.groups().contains(group)).toList();
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
