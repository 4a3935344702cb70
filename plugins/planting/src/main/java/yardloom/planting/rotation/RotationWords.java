package yardloom.planting.rotation;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** The word that asks for a rotation. */
public final class RotationWords {
  /** How many years the plan wants to see. */
  static final AttributeKey<Integer> YEARS =
      new AttributeKey<>("planting.rotation-years", Integer.class);

  private static final int FEWEST = 2;
  private static final int MOST = 8;
  private static final int USUAL = 4;

  private RotationWords() {}

  @Verb(
      help = "Asks where the annuals of each family stand in the years to come.",
      example = "rotation years: 4")
  public static void rotation(
      PlanScope plan,
      @Opt(name = "years", help = "how many, 2 to 8", fallback = "4") Number years) {
    double count = years == null ? USUAL : years.doubleValue();
    if (count != Math.rint(count) || count < FEWEST || count > MOST) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, plan.place(), "years must be 2 to 8, got " + years);
    }
    if (plan.draft().attributes().has(YEARS)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, plan.place(), "a rotation has been asked for already");
    }
    plan.draft().attributes().add(YEARS, (int) count, plan.place());
  }
}
