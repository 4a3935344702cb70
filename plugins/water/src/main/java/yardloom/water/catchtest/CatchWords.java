package yardloom.water.catchtest;

import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word for what was caught from outlets, once the yard stands. */
public final class CatchWords {
  private CatchWords() {}

  @Verb(
      help =
          "Says what cups caught from outlets of a zone in the same time, in any one unit; 24 or more"
              + " tell most.",
      example = "catchTest 'zone 1', [60, 62, 58, 55, 64, 61, 59, 57]")
  public static void catchTest(
      PlanScope in,
      @Arg(name = "zone", help = "what was measured") String zone,
      @Arg(name = "readings", help = "one number for each cup") List<Number> readings) {
    List<Double> values = readings.stream().map(Number::doubleValue).toList();
    boolean isSound = values.stream().allMatch(v -> v >= 0 && Double.isFinite(v));
    if (values.size() < 4 || !isSound || values.stream().noneMatch(v -> v > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a catch test has four readings or more, none negative and not all 0, got " + readings);
    }
    in.draft().attributes().add(CatchTest.KEY, new CatchTest(zone, values), in.place());
  }
}
