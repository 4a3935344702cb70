package yardloom.water.timetable;

import java.util.List;
import java.util.Optional;
import yardloom.facts.SoilProfile;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.TimeSpan;
import yardloom.water.drip.DripRun;
import yardloom.water.drip.WettedGround;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.soilwater.RootDepths;
import yardloom.water.timetable.formula.SoilWater;
import yardloom.water.timetable.formula.WateringPlan;

/**
 * How many days a bed of grown plants can go without rain or watering before its first plant has
 * drawn what it draws easily.
 *
 * <p>Roots go as deep as {@link RootDepths} says, but no deeper than the soil. The easy share is
 * adjusted to the month's daily use. Only the ground that the outlets wet holds water for the next
 * watering.
 */
public final class WateringInterval {
  private static final Source RULE =
      Source.computed(
          "Crop evapotranspiration, Irrigation and Drainage Paper 56",
          "FAO (Allen, Pereira, Raes, Smith)",
          1998,
          "equations 82 and 83, footnote of Table 22");

  private WateringInterval() {}

  /**
   * The interval in month 0 (January) to 11; empty without a soil or climate, or where nothing
   * draws water.
   */
  public static Optional<Derived<TimeSpan>> of(DripRun run, int month, Facts facts) {
    Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
    if (soil.isEmpty() || facts.find(MonthlyWeather.KEY).isEmpty()) {
      return Optional.empty();
    }
    Optional<Derived<Double>> wetted = WettedGround.share(run, soil.get());
    return drawing(run, month, facts).stream()
        .map(s -> of(new Draws(s, month, soil.get(), facts.get(MonthlyWeather.KEY)), wetted))
        .min((a, b) -> a.value().compareTo(b.value()));
  }

  /** Its plants that draw water in a month. */
  static List<Stand> drawing(DripRun run, int month, Facts facts) {
    return run.plants(facts).stream().filter(s -> s.thirst().kc().get(month) > 0).toList();
  }

  /** What plants draw in a month, and from what. */
  record Draws(Stand stand, int month, SoilProfile soil, MonthlyWeather weather) {
    /** Of what names {@link #inputs} gives. */
    static final String READY = "available share × root depth × easy share for this month's use";

    static final String USE = "(Kc × reference ET / days)";

    Length use() {
      return weather
          .referenceEt()
          .get(month)
          .value()
          .times(stand.thirst().kc().get(month) / Months.days(month));
    }

    Length depth() {
      return RootDepths.of(stand).depth().min(soil.depth());
    }

    double easy() {
      return SoilWater.easyShare(RootDepths.of(stand).easyShare(), use());
    }

    Derived.Builder inputs(Derived.Builder why) {
      Stand.Roots roots = RootDepths.of(stand);
      return why.from("available share", soil.available())
          .from("root depth of " + stand.plant(), depth(), stand.place())
          .from("easy share of " + stand.plant() + ", for 5 mm a day", roots.easyShare())
          .from("easy share for this month's use", easy())
          .from("source of depth and share", roots.source().cite())
          .from("Kc " + stand.plant(), stand.thirst().kc().get(month), stand.place())
          .from("reference ET of " + Months.name(month), weather.referenceEt().get(month))
          .from("days of " + Months.name(month), Months.days(month));
    }
  }

  private static Derived<TimeSpan> of(Draws draws, Optional<Derived<Double>> wetted) {
    double share = wetted.map(Derived::value).orElse(1.0);
    Derived.Builder why =
        Derived.by(
            (wetted.isPresent() ? "ground wetted × " : "")
                + Draws.READY
                + " / "
                + Draws.USE
                + " × 1 d",
            RULE);
    wetted.ifPresent(w -> why.from("ground wetted", w));
    return draws
        .inputs(why)
        .gives(
            WateringPlan.interval(
                draws.soil().available().value() * share,
                draws.depth(),
                draws.easy(),
                draws.use()));
  }
}
