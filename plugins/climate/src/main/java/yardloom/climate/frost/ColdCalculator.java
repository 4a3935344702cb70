package yardloom.climate.frost;

import java.time.MonthDay;
import java.util.Optional;
import java.util.Set;
import yardloom.climate.frost.formula.WeatherYears;
import yardloom.climate.weather.DailyWeather;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.FrostDates;
import yardloom.facts.FrostSaid;
import yardloom.facts.Hardiness;
import yardloom.facts.WinterChill;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Temperature;

/**
 * Gives frost dates, whichever word says them, winter chill and the hardiness zone as the plan
 * states them, else as its weather record shows; and what else the record tells. A record without a
 * complete year gives nothing.
 */
public final class ColdCalculator implements Calculator {
  @Override
  public String id() {
    return "sun.cold";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.FROST_SAID);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.FROST, YardFacts.HARDINESS, YardFacts.WINTER_CHILL, ColdAndWarmth.KEY);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Optional<WeatherReading> record = reading(plan);
    record.map(WeatherReading::all).ifPresent(all -> out.give(ColdAndWarmth.KEY, all));
    plan.said(FrostWords.CHILL)
        .map(ColdCalculator::chill)
        .or(() -> record.map(r -> r.all().chillHours()))
        .ifPresent(hours -> out.give(YardFacts.WINTER_CHILL, new WinterChill(hours)));
    Optional<FrostDates> climate =
        plan.said(FrostWords.FROST)
            .map(ColdCalculator::given)
            .or(() -> record.flatMap(WeatherReading::frost));
    boolean own = plan.said(FrostWords.FROST).isPresent();
    in.find(YardFacts.FROST_SAID)
        .map(said -> said(said, climate, own))
        .orElse(climate)
        .ifPresent(f -> out.give(YardFacts.FROST, f));
    plan.said(FrostWords.ZONE)
        .map(z -> given(z.value()))
        .or(() -> record.flatMap(WeatherReading::hardiness))
        .ifPresent(h -> out.give(YardFacts.HARDINESS, h));
  }

  private static Optional<WeatherReading> reading(Plan plan) {
    boolean south = plan.isSouthern();
    Optional<DailyWeather> record = plan.said(WeatherWords.WEATHER).map(Entry::value);
    return record
        .map(r -> new WeatherYears(r, south))
        .filter(y -> !y.years().isEmpty())
        .map(y -> new WeatherReading(y, record.orElseThrow().source()));
  }

  private static Derived<Double> chill(Entry<FrostWords.ChillGiven> entry) {
    return Derived.by("hours of winter chill", entry.value().source())
        .from("hours of winter chill", entry.value().hours(), entry.place())
        .gives(entry.value().hours());
  }

  private static Hardiness given(FrostWords.ZoneGiven zone) {
    return new Hardiness(zone.number(), zone.warmerHalf(), Optional.empty(), zone.source());
  }

  private static FrostDates given(Entry<FrostWords.FrostGiven> entry) {
    FrostWords.FrostGiven frost = entry.value();
    return new FrostDates(
        stated(frost.last(), "last frost of spring", entry),
        stated(frost.first(), "first frost of autumn", entry),
        frost.limit());
  }

  /**
   * What is said with the work goes before a record, and must not differ from what {@code frost}
   * says: one set of days holds for every table.
   */
  private static Optional<FrostDates> said(
      FrostSaid said, Optional<FrostDates> climate, boolean own) {
    Optional<Derived<MonthDay>> last =
        either(said.last(), climate.map(FrostDates::lastOfSpring), "last", own, said.place());
    Optional<Derived<MonthDay>> first =
        either(said.first(), climate.map(FrostDates::firstOfFall), "first", own, said.place());
    if (last.isEmpty() || first.isEmpty()) {
      return Optional.empty();
    }
    Temperature limit = climate.map(FrostDates::limit).orElse(Temperature.celsius(0));
    return Optional.of(new FrostDates(last.get(), first.get(), limit));
  }

  private static Optional<Derived<MonthDay>> either(
      Optional<MonthDay> said,
      Optional<Derived<MonthDay>> climate,
      String which,
      boolean own,
      SourceRef place) {
    if (said.isEmpty()) {
      return climate;
    }
    if (own && !climate.map(Derived::value).equals(said)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          place,
          "the "
              + which
              + " frost is "
              + TableFormat.day(said.get())
              + " here and "
              + TableFormat.day(climate.orElseThrow().value())
              + " by `frost`; say it once");
    }
    return Optional.of(Derived.given(said.get(), which + " frost, said with the work", place));
  }

  private static Derived<MonthDay> stated(
      MonthDay day, String what, Entry<FrostWords.FrostGiven> entry) {
    return Derived.by(what, entry.value().source()).from(what, day, entry.place()).gives(day);
  }
}
