package yardloom.planting.window;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.PartOfPlan;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.PartTurn;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.stock.StockForm;
import yardloom.planting.stock.StockForms;
import yardloom.planting.stock.StockPlan;

/**
 * Gives as what each planting and tree is bought: what the plan says, else what is usual for its
 * kind. What sheds its leaves is bought with bare roots, which cost less and root sooner, where the
 * work begins in their season or that season comes before the one of pots; else in pots. Crowns,
 * canes and runners are dug while they rest: where only pots are planted when the holes are dug,
 * those kinds too come in pots.
 */
public final class StockCalculator implements Calculator {
  /** Holes are dug in the first weeks of the work: the season must hold from here … */
  private static final int FIRST_DAY = 14;

  /** … to here. */
  private static final int LAST_DAY = 28;

  @Override
  public String id() {
    return "planting.stock";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(
        YardFacts.FROST,
        YardFacts.WARM_SEASON,
        YardFacts.CLIMATE,
        YardFacts.WORK_START,
        YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(StockPlan.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<PartOfPlan> parts = in.all(PartOfPlan.FACT);
    if (!parts.isEmpty()) {
      out.give(StockPlan.KEY, ofParts(parts));
      return;
    }
    Choice choice =
        new Choice(
            StockForms.of(plan, in.find(YardFacts.REGION)),
            KindWindows.of(in),
            in.find(YardFacts.WORK_START),
            new LinkedHashMap<>(),
            new TreeSet<>());
    PlantPlaces places = in.get(PlantPlaces.KEY);
    places
        .plantings()
        .forEach(p -> choice.add(StockPlan.Line.of(p), p.choice().stock(), p.plant()));
    places.specimens().forEach(s -> choice.add(StockPlan.Line.of(s), s.stock(), s.plant()));
    out.give(StockPlan.KEY, new StockPlan(choice.chosen(), choice.open()));
  }

  /** Each line as the part buys it in which it is planted. */
  private static StockPlan ofParts(List<PartOfPlan> parts) {
    Map<StockPlan.Line, StockForm> forms = new LinkedHashMap<>();
    Set<String> open = new TreeSet<>();
    for (PartOfPlan part : parts) {
      StockPlan its = part.facts().get(StockPlan.KEY);
      open.addAll(its.open());
      its.forms()
          .forEach(
              (line, form) -> {
                boolean isNow =
                    part.plan()
                        .element(line.in())
                        .filter(e -> e.turn() == PartTurn.NOW)
                        .isPresent();
                if (isNow || !forms.containsKey(line)) {
                  forms.put(line, form);
                }
              });
    }
    return new StockPlan(forms, open);
  }

  /**
   * What is chosen, line by line.
   *
   * @param windows empty where no days of planting are known
   * @param start of the work, if it is dated
   */
  private record Choice(
      StockForms forms,
      Optional<KindWindows> windows,
      Optional<LocalDate> start,
      Map<StockPlan.Line, StockForm> chosen,
      Set<String> open) {
    void add(StockPlan.Line line, Optional<String> said, Plant plant) {
      try {
        chosen.put(
            line,
            said.map(name -> forms.named(name, plant))
                .orElseGet(() -> forms.usual(plant, isBare(plant), isResting(plant))));
      } catch (PlanException e) {
        throw e.at(line.place());
      }
      if (said.isEmpty() && start.isEmpty()) {
        open.add(plant.name());
      }
    }

    private boolean isBare(Plant plant) {
      Optional<PlantingWindow> bare = periods(plant, true);
      if (bare.isEmpty()) {
        return false;
      }
      Optional<PlantingWindow> rooted = periods(plant, false);
      if (start.isEmpty() || rooted.isEmpty()) {
        return true;
      }
      LocalDate early = start.get().plusDays(FIRST_DAY);
      LocalDate late = start.get().plusDays(LAST_DAY);
      return bare.get().periods().stream().anyMatch(p -> p.holds(early) && p.holds(late))
          || bare.get().next(early).isBefore(rooted.get().next(early));
    }

    /** Whether crowns, canes and runners can be had when the holes are dug. */
    private boolean isResting(Plant plant) {
      Optional<PlantingWindow> all = windows.map(w -> w.of(plant));
      if (start.isEmpty() || all.isEmpty() || isBare(plant)) {
        return true;
      }
      LocalDate next = all.get().next(start.get().plusDays(FIRST_DAY));
      return all.get().on(next).filter(p -> StockForm.isPotted(p.how())).isEmpty();
    }

    /** The periods with bare roots, or the others, if there are any. */
    private Optional<PlantingWindow> periods(Plant plant, boolean bare) {
      return windows
          .map(w -> w.of(plant))
          .flatMap(
              all -> {
                List<PlantingWindow.Period> those =
                    all.periods().stream().filter(p -> StockForm.isBare(p.how()) == bare).toList();
                return those.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new PlantingWindow(all.plant(), all.phase(), those));
              });
    }
  }
}
