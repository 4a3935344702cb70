package yardloom.planting.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.facts.PlantingWindow;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Dripline;
import yardloom.facts.work.PlantingDay;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.turn.TurnPlan;
import yardloom.planting.year.GrowingYear;

/**
 * Gives what is to be done for the plants in the first three seasons and in each one after: nothing
 * without frost dates in a climate that has frost, or without any day to count from. Days of
 * planting are those of the crew's visits; where no work is dated, the first ones in season after
 * the date of the plan.
 */
public final class CareCalculator implements Calculator {
  @Override
  public String id() {
    return "planting.care";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY, TurnPlan.KEY);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(
        YardFacts.FROST,
        YardFacts.WARM_SEASON,
        YardFacts.CLIMATE,
        YardFacts.HARDINESS,
        YardFacts.PLANTING_WINDOWS,
        YardFacts.PLANTING_DAYS,
        YardFacts.DRIPLINES,
        YardFacts.SURFACES,
        YardFacts.TOP_UPS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(CareAct.KEY, DiaryEntry.FACT);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<GrowingYear> year = GrowingYear.of(in);
    Map<String, LocalDate> planted = planted(plan, in);
    Optional<LocalDate> start =
        planted.values().stream().min(LocalDate::compareTo).or(() -> plan.info().issued());
    PlantPlaces places = own(plan, in.get(PlantPlaces.KEY));
    if (year.isEmpty() || start.isEmpty() || places.kinds().isEmpty()) {
      return;
    }
    Set<ElementId> dripped =
        in.all(YardFacts.DRIPLINES).stream().map(Dripline::in).collect(Collectors.toSet());
    Lots lots = new Lots(places, planted, TurnDates.of(in.get(TurnPlan.KEY), planted), dripped);
    CareYears years = new CareYears(plan, in, year.get(), start.get(), lots);
    List<CareAct> acts = years.acts();
    acts.forEach(act -> out.give(CareAct.KEY, act));
    CareDiary.of(acts, plan.now()).forEach(entry -> out.give(DiaryEntry.FACT, entry));
  }

  /** What this part of the plan looks after: what it plants, and in the first what stands. */
  private static PlantPlaces own(Plan plan, PlantPlaces all) {
    return new PlantPlaces(
        all.plantings().stream().filter(p -> plan.isOwn(p.bed())).toList(),
        all.specimens().stream().filter(s -> plan.isOwn(s.tree())).toList());
  }

  /** The day of planting of each kind that is to be planted. */
  private static Map<String, LocalDate> planted(Plan plan, Facts in) {
    Map<String, LocalDate> days = new TreeMap<>();
    plan.info()
        .issued()
        .ifPresent(
            date -> {
              for (PlantingWindow w : in.all(YardFacts.PLANTING_WINDOWS)) {
                days.put(w.plant(), w.next(date));
              }
            });
    List<PlantingDay> visits = in.all(YardFacts.PLANTING_DAYS);
    visits.forEach(v -> days.put(v.plant(), v.date()));
    return days;
  }
}
