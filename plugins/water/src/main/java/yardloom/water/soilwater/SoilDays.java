package yardloom.water.soilwater;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.facts.DailyEt;
import yardloom.facts.DailyRain;
import yardloom.facts.SoilProfile;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.unit.Length;
import yardloom.water.need.MonthlyWeather;
import yardloom.water.soilwater.formula.RootZone;

/**
 * The measured days of a plan, as a root zone sees them: rain of the daily series, reference ET of
 * the record on days that have it, else the month's mean day.
 */
final class SoilDays {
  private final DailyRain rain;
  private final Optional<DailyEt> record;
  private final MonthlyWeather weather;
  private final SoilProfile soil;
  private final double measured;

  private SoilDays(
      DailyRain rain, Optional<DailyEt> record, MonthlyWeather weather, SoilProfile soil) {
    this.rain = rain;
    this.record = record;
    this.weather = weather;
    this.soil = soil;
    long known =
        rain.days().stream()
            .filter(d -> record.isPresent() && record.get().days().containsKey(d.date()))
            .count();
    measured = (double) known / rain.days().size();
  }

  /** Empty without daily rain, a climate with its ET, or a soil. */
  static Optional<SoilDays> of(Facts facts) {
    Optional<DailyRain> rain = facts.find(YardFacts.DAILY_RAIN);
    Optional<MonthlyWeather> weather = facts.find(MonthlyWeather.KEY);
    Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
    if (rain.isEmpty() || weather.isEmpty() || soil.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new SoilDays(rain.get(), facts.find(YardFacts.DAILY_ET), weather.get(), soil.get()));
  }

  DailyRain rain() {
    return rain;
  }

  SoilProfile soil() {
    return soil;
  }

  /** The share of days whose ET is that of the record. */
  double measured() {
    return measured;
  }

  /** Roots of the grown plant, no deeper than the soil. */
  Length rootDepth(Stand stand) {
    return RootDepths.of(stand).depth().min(soil.depth());
  }

  RootZone.Sum run(Stand stand, boolean watered) {
    return RootZone.run(
        days(stand), soil.available().value(), RootDepths.of(stand).easyShare(), watered);
  }

  private List<RootZone.Day> days(Stand stand) {
    double fullM = rootDepth(stand).metres();
    double highest = stand.thirst().kc().stream().mapToDouble(k -> k).max().orElse(0);
    boolean isNew = RootDepths.of(stand).isNewEachYear();
    double soFar = 0;
    List<RootZone.Day> days = new ArrayList<>();
    for (DailyRain.Day day : rain.days()) {
      double kc = stand.thirst().kc().get(day.date().getMonthValue() - 1);
      soFar = kc > 0 ? Math.max(soFar, kc) : 0;
      double root = isNew ? RootZone.rootM(fullM, kc, soFar, highest) : fullM;
      days.add(new RootZone.Day(day.rain().millimetres(), et0Mm(day.date()), kc, root));
    }
    return days;
  }

  private double et0Mm(LocalDate date) {
    return record
        .map(r -> r.days().get(date))
        .map(Length::millimetres)
        .orElseGet(
            () ->
                weather.referenceEt().get(date.getMonthValue() - 1).value().millimetres()
                    / date.lengthOfMonth());
  }
}
