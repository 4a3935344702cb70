package yardloom.water.roof;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for the rain that gutters and downspouts must carry. */
public final class RoofWords {
  private static final Length LEAST = Length.inches(0.2);

  /** More has hardly been measured in an hour: 12 in (305 mm), Holt, Missouri, 1947 (memory). */
  private static final Length MOST = Length.inches(16);

  private RoofWords() {}

  @Verb(
      help = "Gives the rain of an hour in the hardest cloudburst that downspouts must carry.",
      example = "cloudburst 4.inch, source: 'the state water survey, 5 minutes, 100 years'")
  public static void cloudburst(
      PlanScope in,
      @Arg(name = "perHour", help = "depth of rain in an hour of it") Length perHour,
      @Opt(name = "source", help = "who published it, for how rare a storm", required = true)
          String source) {
    if (perHour.compareTo(LEAST) < 0 || perHour.compareTo(MOST) > 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a cloudburst brings 0.2 in (5 mm) to 16 in (406 mm) in an hour, got %.2f in (%.0f"
                  + " mm); check the unit",
              perHour.inches(),
              perHour.millimetres()));
    }
    if (in.draft().attributes().saidInFile(Cloudburst.KEY, in.place(), c -> true).isPresent()) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "the cloudburst is already given; a yard has one");
    }
    in.draft()
        .attributes()
        .add(Cloudburst.KEY, new Cloudburst(perHour, Source.plan(source)), in.place());
  }
}
