package yardloom.sun.position;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.Sunrises;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;

/** Says when the sun rises at the earliest in each month, for clocks that act before it. */
public final class SunriseCalculator implements Calculator {
  /** Sunrise moves by less than three minutes a day up to 60°, so every third day will do. */
  private static final int STEP_DAYS = 3;

  @Override
  public String id() {
    return "sun.sunrises";
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.SUNRISES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    plan.site().ifPresent(site -> out.give(YardFacts.SUNRISES, of(site)));
  }

  private static Sunrises of(Site site) {
    CivilDay days =
        new CivilDay(
            site.latitude().degrees(), site.longitude().degrees(), CivilDay.Horizon.UPPER_LIMB);
    List<Optional<LocalTime>> earliest = new ArrayList<>();
    for (int month = 1; month <= 12; month++) {
      LocalDate first = LocalDate.of(SunYear.REFERENCE_YEAR, month, 1);
      List<LocalTime> rises = new ArrayList<>();
      for (int day = 1; day <= first.lengthOfMonth(); day += STEP_DAYS) {
        rise(days.on(first.withDayOfMonth(day), site.zone())).ifPresent(rises::add);
      }
      rise(days.on(first.withDayOfMonth(first.lengthOfMonth()), site.zone())).ifPresent(rises::add);
      earliest.add(rises.stream().min(Comparator.naturalOrder()));
    }
    return new Sunrises(earliest);
  }

  private static Optional<LocalTime> rise(DayEvents day) {
    if (day instanceof DayEvents.RiseAndSet ordinary) {
      return Optional.of(ordinary.sunrise().toLocalTime());
    }
    return day instanceof DayEvents.RiseOnly first
        ? Optional.of(first.sunrise().toLocalTime())
        : Optional.empty();
  }
}
