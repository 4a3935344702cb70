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
import java.util.stream.Stream;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Area;
import yardloom.planting.care.TurnDates.Dated;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinned;
import yardloom.planting.placing.Thinning;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;

/** The plants of a yard, kind by kind, apart what stands already and what is planted. */
final class Lots {
  /** What stands already has passed all that is done for young plants only. */
  private static final int OLD = 100;

  private final Map<String, Lot> byKind = new TreeMap<>();
  private final Map<String, LocalDate> planted;
  private final Map<String, List<Planting>> first = new TreeMap<>();

  /**
   * One kind.
   *
   * @param counts how many of them are in each group of care, by the season of the garden: not all
   *     of a kind are trained, and fewer stand once they are thinned
   * @param planted the day of planting; empty if it stands already
   * @param turn its days, if it follows another on its ground
   */
  record Lot(
      Plant plant,
      Area ground,
      Map<String, IntUnaryOperator> counts,
      Optional<LocalDate> planted,
      Optional<Dated> turn) {
    private Lot plus(Lot other) {
      Map<String, IntUnaryOperator> all = new TreeMap<>(counts);
      other.counts.forEach(
          (group, count) ->
              all.merge(group, count, (a, b) -> n -> a.applyAsInt(n) + b.applyAsInt(n)));
      return new Lot(plant, ground.plus(other.ground), all, planted, turn);
    }

    /** What tells its acts from those of the same kind elsewhere. */
    String suffix() {
      return turn.map(d -> "-" + d.key()).orElse(planted.isEmpty() ? "-standing" : "");
    }

    /** How many are in any group of a list, {@code fig; pomegranate}, in a season of the garden. */
    int count(String groups, int season) {
      return Stream.of(groups.split("; "))
          .mapToInt(g -> counts.getOrDefault(g, n -> 0).applyAsInt(season))
          .max()
          .orElse(0);
    }

    /** Its own season in a season of the garden, from 1; below 1 before its first. */
    int age(int year, int firstYear) {
      return planted.isEmpty() ? OLD + year : year - firstYear + 1;
    }
  }

  /**
   * @param planted days of planting by kind; what is to be planted and has none is left out
   * @param turns of what follows another on its ground
   * @param dripped beds and trees with dripline
   */
  Lots(
      PlantPlaces places,
      Map<String, LocalDate> planted,
      Map<Planting, Dated> turns,
      Set<ElementId> dripped) {
    this.planted = planted;
    // What another follows is cleared then, not in fall with the rest.
    Set<Planting> followed = new HashSet<>();
    places.plantings().forEach(p -> p.follows().ifPresent(f -> followed.add(f.before())));
    for (Planting p : places.plantings()) {
      if (p.follows().isPresent()) {
        Optional.ofNullable(turns.get(p)).ifPresent(dated -> add(p, dated, followed.contains(p)));
      } else if (!p.at().isEmpty()) {
        first.computeIfAbsent(p.plant().name(), k -> new ArrayList<>()).add(p);
        boolean goes = followed.contains(p);
        add(p.plant(), counts(p), p.ground().area(), p.choice().stands(), Set.of(), goes);
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
      add(s.plant(), n -> 1, Area.ZERO, s.tree().stands(), more, false);
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

  private static Map<String, IntUnaryOperator> counts(
      Plant plant, IntUnaryOperator count, boolean isFollowed) {
    Map<String, IntUnaryOperator> counts = new TreeMap<>();
    for (String group : CareGroups.of(plant)) {
      boolean isClearedBefore = isFollowed && CareGroups.isCleared(group);
      counts.put(group, isClearedBefore ? n -> 0 : count);
    }
    return counts;
  }

  private void add(
      Plant plant,
      IntUnaryOperator count,
      Area ground,
      boolean stands,
      Set<String> more,
      boolean isFollowed) {
    LocalDate day = planted.get(plant.name());
    if (!stands && day == null) {
      return;
    }
    Map<String, IntUnaryOperator> counts = counts(plant, count, isFollowed);
    more.forEach(g -> counts.put(g, count));
    Optional<LocalDate> from = stands ? Optional.empty() : Optional.of(day);
    Lot lot = new Lot(plant, ground, counts, from, Optional.empty());
    byKind.merge(plant.name() + (stands ? " standing" : ""), lot, Lot::plus);
  }

  /** What follows another: its ground has been counted with that. */
  private void add(Planting p, Dated dated, boolean isFollowed) {
    Map<String, IntUnaryOperator> counts = counts(p.plant(), n -> p.at().size(), isFollowed);
    Lot lot =
        new Lot(p.plant(), Area.ZERO, counts, Optional.of(dated.planted()), Optional.of(dated));
    String key = p.plant().name() + " after " + dated.before() + " " + dated.planted();
    byKind.merge(key, lot, Lot::plus);
  }

  /** The turn of a kind that stands first on all its grounds, of the first of these. */
  Optional<Turn> first(Lot lot, TurnPlan turns) {
    return turns.first(first.getOrDefault(lot.plant().name(), List.of())).stream().findFirst();
  }

  Collection<Lot> all() {
    return byKind.values();
  }

  /** The ground of all beds, or of those of annuals. */
  Area ground(boolean annualOnly) {
    List<Lot> lots = new ArrayList<>(byKind.values());
    return lots.stream()
        .filter(l -> !annualOnly || l.plant().growth().season().isAnnual())
        .map(Lot::ground)
        .reduce(Area.ZERO, Area::plus);
  }
}
