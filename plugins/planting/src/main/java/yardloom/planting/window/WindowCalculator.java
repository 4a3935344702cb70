package yardloom.planting.window;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.stock.StockPlan;
import yardloom.planting.turn.Turn;
import yardloom.planting.turn.TurnPlan;

/** Gives the usual days of each kind that is to be planted, for what it is bought as. */
public final class WindowCalculator implements Calculator {
  private static final Source TURN =
      Source.commonPractice("one crop is cleared before the next is planted");

  @Override
  public String id() {
    return "planting.windows";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY, StockPlan.KEY, TurnPlan.KEY);
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
    PlantPlaces places = in.get(PlantPlaces.KEY);
    for (Plant plant : places.toPlant().values()) {
      List<Planting> rows =
          places.plantings().stream().filter(p -> p.plant().name().equals(plant.name())).toList();
      List<Planting> own = rows.stream().filter(p -> p.follows().isEmpty()).toList();
      if (rows.isEmpty() || !own.isEmpty()) {
        PlantingWindow all = bought(windows.get().of(plant), stock);
        out.give(YardFacts.PLANTING_WINDOWS, first(all, own, in.get(TurnPlan.KEY)));
      }
    }
  }

  /** What stands first on all its grounds is sown early enough for all that follow it there. */
  private static PlantingWindow first(PlantingWindow all, List<Planting> rows, TurnPlan turns) {
    List<Turn> own = turns.first(rows);
    if (own.isEmpty()) {
      return all;
    }
    LocalDate from = own.stream().map(Turn::planted).max(LocalDate::compareTo).get();
    LocalDate until = own.stream().map(Turn::latest).min(LocalDate::compareTo).get();
    PlantingWindow.Period period = all.periods().get(0);
    return new PlantingWindow(
        all.plant(),
        all.phase(),
        List.of(
            new PlantingWindow.Period(
                period.how(),
                day(period.from(), from),
                day(period.until(), until.isBefore(from) ? from : until))));
  }

  private static Derived<MonthDay> day(Derived<MonthDay> usual, LocalDate date) {
    LocalDate day = usual.value().atYear(date.getYear());
    return Derived.by("usual day + days later", TURN)
        .from("usual day", usual)
        .from("days later", (int) (date.toEpochDay() - day.toEpochDay()))
        .gives(MonthDay.from(date));
  }

  /** The days for what the kind is bought as; all where none of its rules is for that. */
  private static PlantingWindow bought(PlantingWindow all, StockPlan stock) {
    List<PlantingWindow.Period> periods =
        all.periods().stream().filter(p -> stock.goesInto(all.plant(), p.how())).toList();
    return periods.isEmpty() ? all : new PlantingWindow(all.plant(), all.phase(), periods);
  }
}
