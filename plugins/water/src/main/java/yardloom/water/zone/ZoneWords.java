package yardloom.water.zone;

import java.util.Locale;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word for what the tap gives. */
public final class ZoneWords {
  private ZoneWords() {}

  @Verb(
      help =
          "Says how much water the tap gives through the pressure regulator; zones keep below it.",
      example = "supply flow: 4.gpm")
  public static void supply(
      PlanScope in,
      @Opt(
              name = "flow",
              help = "measured with a bucket and a watch, regulator in place",
              required = true)
          Flow flow) {
    if (flow.gallonsPerMinute() < 0.1 || flow.gallonsPerMinute() > 100) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "a garden supply gives between 0.1 gpm (23 L/h) and 100 gpm (22,700 L/h), got %.2f gpm"
                  + " (%.1f L/h); check the unit",
              flow.gallonsPerMinute(),
              flow.litresPerHour()));
    }
    if (in.draft().attributes().has(Zone.SUPPLY)) {
      throw new PlanException(ProblemCode.DUPLICATE, in.place(), "the supply is already given");
    }
    in.draft().attributes().add(Zone.SUPPLY, flow, in.place());
  }
}
