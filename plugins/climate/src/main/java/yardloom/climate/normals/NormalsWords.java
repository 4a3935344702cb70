package yardloom.climate.normals;

import java.util.List;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The words that name or give the monthly normals of the yard. */
public final class NormalsWords {
  /** The climate of the yard, from the catalogue or given in the plan. */
  static final AttributeKey<ClimateNormals> CLIMATE =
      new AttributeKey<>("water.climate", ClimateNormals.class);

  private NormalsWords() {}

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
    if (in.draft().attributes().saidInFile(CLIMATE, in.place(), c -> true).isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the climate is already given; a yard has one");
    }
    in.draft().attributes().add(CLIMATE, normals, in.place());
  }
}
