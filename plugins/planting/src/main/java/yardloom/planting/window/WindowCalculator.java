package yardloom.planting.window;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.stock.StockPlan;

/** Gives the usual days of each kind that is to be planted, for what it is bought as. */
public final class WindowCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.windows";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY, StockPlan.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST, YardFacts.WARM_SEASON, YardFacts.CLIMATE);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.PLANTING_WINDOWS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<KindWindows> windows = KindWindows.of(in);
    if (windows.isEmpty()) {
      return;
    }
    StockPlan stock = in.get(StockPlan.KEY);
    for (Plant plant : in.get(PlantPlaces.KEY).toPlant().values()) {
      out.give(YardFacts.PLANTING_WINDOWS, bought(windows.get().of(plant), stock));
    }
  }

  /** The days for what the kind is bought as; all where none of its rules is for that. */
  private static PlantingWindow bought(PlantingWindow all, StockPlan stock) {
    List<PlantingWindow.Period> periods =
        all.periods().stream().filter(p -> stock.goesInto(all.plant(), p.how())).toList();
    return periods.isEmpty() ? all : new PlantingWindow(all.plant(), all.phase(), periods);
  }
}
