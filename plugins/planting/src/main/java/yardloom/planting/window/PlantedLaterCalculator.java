package yardloom.planting.window;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PlantedLater;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;

/**
 * Gives the beds and trees of which kinds are planted in another season than the rest.
 *
 * <p>The crew plants two weeks or more after it begins: woody plants and all else each on the day
 * on which all are in season that can be before the first of them no longer is; and it stays for
 * some six weeks from the later of the two. A kind that is not in season till then is planted later
 * (common practice). Where the plan says no first day or no days of planting are known, everything
 * is planted at once.
 */
public final class PlantedLaterCalculator implements Calculator {
  /** Nothing is planted before from the beginning of the work … */
  private static final int FIRST_DAY = 14;

  /** … and so long after the first plants the crew has gone. */
  private static final int STAY_DAYS = 42;

  @Override
  public String id() {
    return "planting.later";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.PLANTING_WINDOWS, YardFacts.WORK_START);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.PLANTED_LATER);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<PartOfPlan> parts = in.all(PartOfPlan.FACT);
    if (!parts.isEmpty()) {
      ofParts(parts).forEach(bed -> out.give(YardFacts.PLANTED_LATER, bed));
      return;
    }
    Optional<LocalDate> start = in.find(YardFacts.WORK_START);
    if (start.isEmpty()) {
      return;
    }
    Set<String> late = late(in.all(YardFacts.PLANTING_WINDOWS), start.get().plusDays(FIRST_DAY));
    Map<ElementId, Set<String>> beds = new TreeMap<>();
    PlantPlaces places = in.get(PlantPlaces.KEY);
    for (Planting planting : places.plantings()) {
      if (planting.follows().isEmpty() && !planting.choice().stands()) {
        add(planting.bed().id(), planting.plant().name(), late, beds);
      }
    }
    places.specimens().stream()
        .filter(s -> !s.tree().stands())
        .forEach(s -> add(s.tree().id(), s.plant().name(), late, beds));
    beds.forEach(
        (bed, kinds) ->
            out.give(YardFacts.PLANTED_LATER, new PlantedLater(bed, List.copyOf(kinds))));
  }

  private static void add(
      ElementId in, String plant, Set<String> late, Map<ElementId, Set<String>> beds) {
    if (late.contains(plant)) {
      beds.computeIfAbsent(in, b -> new TreeSet<>()).add(plant);
    }
  }

  /** The kinds that come into season when the crew has gone. */
  static Set<String> late(List<PlantingWindow> windows, LocalDate ready) {
    Map<WorkPhase, LocalDate> first = new EnumMap<>(WorkPhase.class);
    for (PlantingWindow w : windows) {
      first.computeIfAbsent(
          w.phase(), p -> first(windows.stream().filter(o -> o.phase() == p).toList(), ready));
    }
    LocalDate gone =
        first.values().stream().max(Comparator.naturalOrder()).orElse(ready).plusDays(STAY_DAYS);
    return windows.stream()
        .filter(w -> w.next(first.get(w.phase())).isAfter(gone))
        .map(PlantingWindow::plant)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The day on which the most are planted together without one of them going out of season. */
  private static LocalDate first(List<PlantingWindow> windows, LocalDate ready) {
    LocalDate latest =
        windows.stream()
            .map(w -> w.until(w.next(ready)))
            .min(Comparator.naturalOrder())
            .orElse(ready);
    return windows.stream()
        .map(w -> w.next(ready))
        .filter(next -> !next.isAfter(latest))
        .max(Comparator.naturalOrder())
        .orElse(ready);
  }

  /** Each bed as the part has it in which it is made. */
  private static List<PlantedLater> ofParts(List<PartOfPlan> parts) {
    List<PlantedLater> beds = new ArrayList<>();
    for (PartOfPlan part : parts) {
      part.facts().all(YardFacts.PLANTED_LATER).stream()
          .filter(
              bed ->
                  part.plan().element(bed.in()).filter(e -> e.turn() == PartTurn.NOW).isPresent())
          .forEach(beds::add);
    }
    return beds;
  }
}
