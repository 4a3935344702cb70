package yardloom.sun.spot;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Area;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that looks for sunny ground. */
public final class SpotWords {
  public static final AttributeKey<BestSpot> BEST_SPOT =
      new AttributeKey<>("sun.best-spot", BestSpot.class);

  private SpotWords() {}

  /** A search for sunny ground of some size. */
  public record BestSpot(Area area, String crop, double hours) {}

  @Verb(
      help = "Looks for the sunniest free ground of some size.",
      example = "bestSpot 200.sqft, crop: 'tomato', hours: 8")
  public static void bestSpot(
      PlanScope in,
      @Arg(name = "area", help = "how much ground is wanted") Area area,
      @Opt(name = "crop", help = "what it is for, for the table", fallback = "any crop")
          String crop,
      @Opt(
              name = "hours",
              help = "mean direct sun a day that it should have in the season",
              fallback = "what the scheme calls full sun")
          Number hours) {
    if (area.squareMetres() <= 0) {
      throw problem(in.place(), "bestSpot looks for an area of more than zero, got " + area);
    }
    if (hours != null && !(hours.doubleValue() > 0 && hours.doubleValue() <= 24)) {
      throw problem(in.place(), "hours of sun must be above 0 and at most 24, got " + hours);
    }
    in.draft()
        .attributes()
        .add(
            BEST_SPOT,
            new BestSpot(
                area, crop == null ? "any crop" : crop, hours == null ? 0 : hours.doubleValue()),
            in.place());
  }

  private static PlanException problem(SourceRef place, String message) {
    return new PlanException(ProblemCode.OUT_OF_RANGE, place, message);
  }
}
