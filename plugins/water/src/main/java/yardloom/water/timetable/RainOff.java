package yardloom.water.timetable;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.facts.SoilProfile;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.drip.DripRun;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.timetable.WateringInterval.Draws;
import yardloom.water.timetable.formula.RainSaved;
import yardloom.water.timetable.formula.SoilWater;
import yardloom.water.zone.Zone;

/**
 * For how many days a rain waters a zone, month by month: until the first of its plants has used
 * what of the rain stays in its roots.
 *
 * <p>Of one rain as large a share is of use as of the whole month's, by the plan's method; a month
 * that has less rain than this one is taken to have had this one alone. Rain wets all ground, not
 * only what the outlets wet.
 */
final class RainOff {
  /** What is read. */
  static final Set<FactKey<?>> READS =
      Set.of(
          DripRun.KEY,
          Zone.KEY,
          MonthlyWeather.KEY,
          YardFacts.CLIMATE,
          YardFacts.SOIL,
          YardFacts.STANDS);

  /** Nobody leaves a timer off for longer without looking (common practice). */
  private static final int MOST = 14;

  private static final Source RULE =
      Source.computed(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO (Allen, Pereira, Raes, Smith)",
          1998,
          "equations 83 and 85");

  private RainOff() {}

  /** The rains that are told, as a gauge in the yard is read. */
  static List<Length> rains(Plan plan) {
    return plan.info().units() == UnitSystem.US
        ? List.of(Length.inches(0.5), Length.inches(1))
        : List.of(Length.millimetres(12), Length.millimetres(25));
  }

  /** The same in words. */
  static String words(Plan plan, Length rain) {
    if (plan.info().units() == UnitSystem.METRIC) {
      return Math.round(rain.millimetres()) + " mm";
    }
    return rain.inches() < 1 ? "1/2 in" : Math.round(rain.inches()) + " in";
  }

  /** What a gauge is read to. */
  static String gauge(Plan plan, Length rain) {
    return plan.info().units() == UnitSystem.US
        ? String.format(Locale.ROOT, "%.1f in", rain.inches())
        : Math.round(rain.millimetres()) + " mm";
  }

  /** Whole days for the person at the timer. */
  static int whole(Derived<TimeSpan> days) {
    return (int) Math.min(MOST, Math.floor(days.value().days() + 1e-9));
  }

  /**
   * The time in month 0 (January) to 11; empty without a soil or climate, or where nothing draws
   * water.
   */
  static Optional<Derived<TimeSpan>> of(int zone, int month, Length rain, Facts facts) {
    Optional<ClimateNormals> climate = facts.find(YardFacts.CLIMATE);
    Optional<MonthlyWeather> weather = facts.find(MonthlyWeather.KEY);
    Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
    if (climate.isEmpty() || weather.isEmpty() || soil.isEmpty()) {
      return Optional.empty();
    }
    Length ofMonth = climate.get().months().get(month).rain().max(rain);
    Derived<Length> usable =
        weather
            .get()
            .rainBy()
            .of(ofMonth, climate.get().source(), weather.get().referenceEt().get(month));
    return Zone.of(zone, facts).runs(facts).stream()
        .flatMap(run -> WateringInterval.drawing(run, month, facts).stream())
        .map(s -> days(new Draws(s, month, soil.get(), weather.get()), rain, ofMonth, usable))
        .min(Comparator.comparing(Derived::value));
  }

  private static Derived<TimeSpan> days(
      Draws draws, Length rain, Length ofMonth, Derived<Length> usable) {
    Length ready =
        SoilWater.ready(draws.depth().times(draws.soil().available().value()), draws.easy());
    Derived.Builder why =
        Derived.by(
                "min(rain that fell × usable of the month's rain / month's rain, "
                    + Draws.READY
                    + ") / "
                    + Draws.USE
                    + " × 1 d",
                RULE)
            .from("rain that fell", rain)
            .from("usable of the month's rain", usable)
            .from("month's rain, at least this one", ofMonth);
    return draws
        .inputs(why)
        .gives(RainSaved.of(rain.times(usable.value().ratioTo(ofMonth)), ready, draws.use()));
  }
}
