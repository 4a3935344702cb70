package yardloom.water.need;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.facts.work.PlantingDay;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;

/**
 * Plants of one bed, or one tree, that are planted on one day and begin to draw water on one.
 *
 * @param planted the day of the visit
 * @param grows that day, or the first of the month in which leaves come, if it is in dormancy
 */
public record NewPlants(ElementId in, LocalDate planted, LocalDate grows, List<Stand> stands) {

  /** Of all beds and trees, by name and day; those without a known day are left out. */
  public static List<NewPlants> of(Facts facts) {
    Map<String, LocalDate> days = new TreeMap<>();
    for (PlantingDay day : facts.all(YardFacts.PLANTING_DAYS)) {
      days.putIfAbsent(day.plant(), day.date());
    }
    Map<String, NewPlants> groups = new TreeMap<>();
    for (Stand stand : facts.all(YardFacts.STANDS)) {
      LocalDate planted = days.get(stand.plant());
      if (stand.planted().stands() || stand.follows() || planted == null) {
        continue;
      }
      Optional<LocalDate> grows = grows(stand, planted);
      if (grows.isPresent()) {
        groups
            .computeIfAbsent(
                stand.in() + " " + planted + " " + grows.get(),
                k -> new NewPlants(stand.in(), planted, grows.get(), new ArrayList<>()))
            .stands
            .add(stand);
      }
    }
    return groups.values().stream()
        .sorted(
            Comparator.comparing((NewPlants n) -> n.in.name()).thenComparing(NewPlants::planted))
        .toList();
  }

  /** Empty for what never draws water, as where no season is known. */
  private static Optional<LocalDate> grows(Stand stand, LocalDate planted) {
    if (stand.thirst().kc().get(planted.getMonthValue() - 1) > 0) {
      return Optional.of(planted);
    }
    LocalDate month = planted.withDayOfMonth(1).plusMonths(1);
    for (int i = 0; i < 12; i++) {
      if (stand.thirst().kc().get(month.plusMonths(i).getMonthValue() - 1) > 0) {
        return Optional.of(month.plusMonths(i));
      }
    }
    return Optional.empty();
  }

  boolean rests() {
    return grows.isAfter(planted);
  }

  public String kinds() {
    return kinds(List.of(this));
  }

  /** Of all of them, each kind once. */
  public static String kinds(List<NewPlants> groups) {
    return groups.stream()
        .flatMap(g -> g.stands.stream())
        .map(Stand::plant)
        .distinct()
        .sorted()
        .collect(Collectors.joining(", "));
  }
}
