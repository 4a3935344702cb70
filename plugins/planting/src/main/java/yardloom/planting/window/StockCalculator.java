package yardloom.planting.window;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.stock.StockForm;
import yardloom.planting.stock.StockForms;
import yardloom.planting.stock.StockPlan;

/**
 * Gives as what each planting and tree is bought: what the plan says, else what is usual for its
 * kind. What sheds its leaves is bought with bare roots, which cost less and root sooner, where the
 * work begins in their season or that season comes before the one of pots; else in pots.
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
    StockForms forms = StockForms.of(plan, in.find(YardFacts.REGION));
    Optional<LocalDate> start = in.find(YardFacts.WORK_START);
    Map<StockPlan.Line, StockForm> chosen = new LinkedHashMap<>();
    Set<String> open = new TreeSet<>();
    PlantPlaces places = in.get(PlantPlaces.KEY);
    for (Planting p : places.plantings()) {
      Optional<String> said = p.choice().stock();
      chosen.put(StockPlan.Line.of(p), form(forms, said, p.plant(), p.place(), in));
      if (said.isEmpty() && start.isEmpty()) {
        open.add(p.plant().name());
      }
    }
    for (Planting.Specimen s : places.specimens()) {
      chosen.put(StockPlan.Line.of(s), form(forms, s.stock(), s.plant(), s.place(), in));
      if (s.stock().isEmpty() && start.isEmpty()) {
        open.add(s.plant().name());
      }
    }
    out.give(StockPlan.KEY, new StockPlan(chosen, open));
  }

  private static StockForm form(
      StockForms forms, Optional<String> said, Plant plant, SourceRef place, Facts in) {
    try {
      return said.map(name -> forms.named(name, plant))
          .orElseGet(() -> forms.usual(plant, isBare(plant, in)));
    } catch (PlanException e) {
      throw e.at(place);
    }
  }

  private static boolean isBare(Plant plant, Facts in) {
    Optional<PlantingWindow> window = KindWindows.of(plant, in);
    if (window.isEmpty() || !has(window.get(), true)) {
      return false;
    }
    Optional<LocalDate> start = in.find(YardFacts.WORK_START);
    if (start.isEmpty() || !has(window.get(), false)) {
      return true;
    }
    LocalDate early = start.get().plusDays(FIRST_DAY);
    LocalDate late = start.get().plusDays(LAST_DAY);
    PlantingWindow bare = only(window.get(), true);
    if (bare.periods().stream().anyMatch(p -> p.holds(early) && p.holds(late))) {
      return true;
    }
    return bare.next(early).isBefore(only(window.get(), false).next(early));
  }

  private static boolean has(PlantingWindow window, boolean bare) {
    return window.periods().stream().anyMatch(p -> KindWindows.isBare(p) == bare);
  }

  private static PlantingWindow only(PlantingWindow window, boolean bare) {
    return new PlantingWindow(
        window.plant(),
        window.phase(),
        window.periods().stream().filter(p -> KindWindows.isBare(p) == bare).toList());
  }
}
