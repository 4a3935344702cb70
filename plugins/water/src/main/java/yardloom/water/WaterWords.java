package yardloom.water;

import java.util.List;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.water.data.ClimateCatalogue;
import yardloom.water.data.DailyRainText;
import yardloom.water.data.NormalsReader;
import yardloom.water.model.DailyRain;
import yardloom.water.model.WaterKeys;

/** The words for the climate of the yard. */
public final class WaterWords {
  private WaterWords() {}

  @Verb(
      help = "Names the climate whose monthly normals hold for the yard.",
      example = "climate 'urbana-il'")
  public static void climate(
      PlanScope in, @Arg(name = "name", help = "a climate of the catalogue") String name) {
    climate(in, ClimateCatalogue.shipped().climate(name));
  }

  @Verb(
      help =
          "Gives the monthly normals of a place that the catalogue does not know, as a weather"
              + " service prints them; January first.",
      example =
          "climateNormals('our town', rain: [60, 50, 55, 45, 40, 30, 20, 25, 40, 55, 65, 70], max: [7,"
              + " 8, 11, 14, 18, 21, 23, 23, 20, 15, 10, 7], min: [1, 1, 3, 5, 8, 11, 13, 13, 10, 7,"
              + " 4, 2], units: 'mm celsius', source: 'weather service, 1991-2020')")
  public static void climateNormals(
      PlanScope in,
      @Arg(name = "place", help = "what place the figures describe") String place,
      @Opt(name = "rain", help = "total of each month", required = true) List<?> rain,
      @Opt(name = "max", help = "mean daily maximum of each month", required = true) List<?> max,
      @Opt(name = "min", help = "mean daily minimum of each month", required = true) List<?> min,
      @Opt(
              name = "units",
              help = "of rain and temperature",
              required = true,
              choices = NormalsReader.Units.class)
          String units,
      @Opt(name = "source", help = "who published them, over which years", required = true)
          String source) {
    NormalsReader.Units given = Choices.parse(NormalsReader.Units.class, units);
    climate(in, NormalsReader.read(place, rain, max, min, given, Source.plan(source)));
  }

  /** A plan may say otherwise than its regional file, not twice in one file. */
  private static void climate(PlanScope in, ClimateNormals normals) {
    if (in.draft().attributes().saidInFile(WaterKeys.CLIMATE, in.place(), c -> true).isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the climate is already given; a yard has one");
    }
    in.draft().attributes().add(WaterKeys.CLIMATE, normals, in.place());
  }

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
    if (in.draft().attributes().has(WaterKeys.DAILY_RAIN)) {
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
    in.draft()
        .attributes()
        .add(WaterKeys.DAILY_RAIN, new DailyRain(station, from, days), in.place());
  }
}
