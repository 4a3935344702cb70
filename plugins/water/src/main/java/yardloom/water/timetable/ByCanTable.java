package yardloom.water.timetable;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.Table;
import yardloom.water.drip.DripRun;
import yardloom.water.need.EstablishmentTable;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.need.NewPlants;
import yardloom.water.need.TaperNeed;
import yardloom.water.need.TaperTable;
import yardloom.water.need.formula.Taper;

/**
 * On the sheet beside the timer: new trees and beds that no line waters from the start, those alike
 * told together. Their figures are those of {@link TaperTable}.
 */
public final class ByCanTable {
  private ByCanTable() {}

  /** What it reads. */
  public static final Set<FactKey<?>> READS =
      Set.of(
          DripRun.KEY,
          YardFacts.STANDS,
          YardFacts.PLANTING_DAYS,
          YardFacts.PHASE_DAYS,
          MonthlyWeather.KEY);

  /** The table; empty where the timer waters all. */
  public static Table of(Plan plan, Facts facts) {
    Table.Builder table =
        Table.titled("first-weeks-by-can", "First weeks by can: what the timer does not water")
            .column(Column.text("days", "Days"))
            .column(Column.text("from", "From"))
            .column(Column.text("until", "Until"))
            .column(Column.text("when", "Water and look"))
            .column(Column.of("each", "Each one, each time", Measure.SMALL_WATER));
    if (facts.find(MonthlyWeather.KEY).isEmpty()) {
      return table.build();
    }
    Map<String, List<NewPlants>> alike = new LinkedHashMap<>();
    for (NewPlants plants : NewPlants.of(facts)) {
      boolean isByLine =
          facts.all(DripRun.KEY).stream()
              .anyMatch(r -> r.bed().equals(plants.in()) && r.reachesRootBalls());
      if (!isByLine) {
        String key = plants.kinds() + plants.planted() + plants.grows() + each(plan, facts, plants);
        alike.computeIfAbsent(key, k -> new ArrayList<>()).add(plants);
      }
    }
    for (List<NewPlants> group : alike.values()) {
      NewPlants one = group.get(0);
      table.heading(
          NameRuns.text(group.stream().map(g -> g.in().name()).toList()) + ": " + one.kinds());
      rows(table, plan, facts, one);
    }
    if (!alike.isEmpty()) {
      table.note(
          "Pour slowly onto the root ball, under the mulch. Look: a finger through the mulch beside"
              + " the stem, 2 in (5 cm) deep; wet and cold: wait a day; leave one out after 1/2 in"
              + " (13 mm) of rain. After day 45 every third day to week 12, then weekly until it is"
              + " established, while it is dry ("
              + EstablishmentTable.MINNESOTA.cite()
              + "); the lines of the timer help once roots reach the ground they wet.");
    }
    return table.build();
  }

  private static List<Double> each(Plan plan, Facts facts, NewPlants plants) {
    return Taper.STEPS.stream()
        .map(s -> TaperNeed.each(plan, plants, s, facts.get(MonthlyWeather.KEY)).value().litres())
        .toList();
  }

  private static void rows(Table.Builder table, Plan plan, Facts facts, NewPlants plants) {
    MonthlyWeather weather = facts.get(MonthlyWeather.KEY);
    for (Taper.Step step : Taper.STEPS) {
      LocalDate from = plants.grows().plusDays(step.from() - 1L);
      boolean rests = TaperNeed.rests(plants, step);
      table.row(
          Cell.text(step.from() + " to " + step.until()),
          Cell.of(from),
          Cell.of(from.plusDays(step.days() - 1L)),
          Cell.text(
              rests ? "none: it rests; look monthly" : TaperTable.when(plants, step, weather)),
          rests ? Cell.BLANK : Cell.of(TaperNeed.each(plan, plants, step, weather)));
    }
  }
}
