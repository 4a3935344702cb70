package yardloom.climate.radiation;

import java.util.ArrayList;
import java.util.List;
import yardloom.climate.weather.WeatherWords;
import yardloom.facts.SolarRadiation;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that gives measured radiation. */
public final class RadiationWords {
  /** Global radiation by month, as the plan gives it. */
  static final AttributeKey<SolarRadiation.Given> RADIATION =
      new AttributeKey<>("sun.radiation", SolarRadiation.Given.class);

  private static final double MJ_PER_KWH = 3.6;

  /** A little more than a clear day anywhere on earth brings. */
  private static final double MOST_MJ = 45;

  private RadiationWords() {}

  @Verb(
      help = "Gives measured sunlight by month, cloud included, for daily light and water need.",
      example =
          "solarRadiation([1.9, 2.7, 3.6, 4.7, 5.7, 6.3, 6.2, 5.5, 4.6, 3.3, 2.1, 1.6], source:"
              + " 'nearest station')")
  public static void solarRadiation(
      PlanScope in,
      @Arg(name = "months", help = "global radiation on level ground a day, January to December")
          List<?> months,
      @Opt(name = "source", help = "who measured it, over which years", required = true)
          String source,
      @Opt(
              name = "unit",
              help = "of a square metre and day",
              fallback = "kwh",
              choices = Energy.class)
          String unit) {
    boolean kwh = Choices.parse(Energy.class, unit, Energy.KWH) == Energy.KWH;
    List<Double> megajoules = new ArrayList<>();
    for (Object month : months) {
      if (!(month instanceof Number number)) {
        throw problem(in, "solarRadiation takes 12 plain numbers, got '" + month + "'");
      }
      double value = number.doubleValue() * (kwh ? MJ_PER_KWH : 1);
      if (!(value >= 0 && value <= MOST_MJ)) {
        throw problem(
            in,
            "radiation must be from 0 to 12.5 kWh (45 MJ) per square metre and day, got "
                + month
                + "; check the unit");
      }
      megajoules.add(value);
    }
    if (megajoules.size() != 12) {
      throw problem(in, "solarRadiation takes 12 monthly values, got " + megajoules.size());
    }
    WeatherWords.once(
        in,
        RADIATION,
        new SolarRadiation.Given(megajoules, Source.plan(source)),
        "radiation values");
  }

  /** Units of a day's radiation on a square metre. */
  public enum Energy {
    KWH,
    MJ
  }

  private static PlanException problem(PlanScope in, String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, in.place(), message);
  }
}
