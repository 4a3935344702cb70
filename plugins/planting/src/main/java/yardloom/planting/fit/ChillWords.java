package yardloom.planting.fit;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Verb;

/** The word for the chill that a fruit tree asks for. */
public final class ChillWords {
  /** Hours of winter chill that a tree asks for. */
  static final AttributeKey<Double> CHILL = new AttributeKey<>("planting.chill", Double.class);

  private ChillWords() {}

  @Verb(
      help = "Says how much winter chill a fruit tree asks for, as the nursery gives it.",
      example = "chillNeed 800")
  public static void chillNeed(
      TreeScope in,
      @Arg(name = "hours", help = "hours below 45 °F (7 °C) in a winter, 0 to 2500") Number hours) {
    double value = hours.doubleValue();
    if (!(value >= 0 && value <= 2500)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, in.place(), "chillNeed must be 0 to 2500 hours, got " + hours);
    }
    in.element().attributes().add(CHILL, value, in.place());
  }
}
