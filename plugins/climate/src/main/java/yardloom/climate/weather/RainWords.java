package yardloom.climate.weather;

import java.util.List;
import yardloom.facts.DailyRain;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that gives rain by the day. */
public final class RainWords {
  /** Rain by the day. */
  static final AttributeKey<DailyRain> DAILY_RAIN =
      new AttributeKey<>("water.daily-rain", DailyRain.class);

  private RainWords() {}

  @Verb(
      help =
          "Rain of every day of a year or more, by which tanks are judged; the text has the columns"
              + " date and rain_mm or rain_in.",
      example = "dailyRain('date,rain_mm', station: 'the airport', source: 'weather service')")
  public static void dailyRain(
      PlanScope in,
      @Arg(name = "text", help = "the table, as from fileText('rain-2012.csv')") String text,
      @Opt(name = "station", help = "where it was measured", required = true) String station,
      @Opt(name = "source", help = "who published it", required = true) String source) {
    if (in.draft().attributes().has(DAILY_RAIN)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "`dailyRain` is already given; a yard has one series");
    }
    List<DailyRain.Day> days;
    try {
      days = DailyRainText.read(text);
    } catch (PlanException e) {
      throw e.at(in.place());
    }
    Source from = Source.plan("daily rain of " + station + ", " + source);
    in.draft().attributes().add(DAILY_RAIN, new DailyRain(station, from, days), in.place());
  }
}
