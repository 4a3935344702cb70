package yardloom.water.need;

import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;
import yardloom.water.need.formula.WaterBudget;

/** The words for a landscape's water allowance. */
public final class AllowanceWords {
  /** Plant factor of a bed that is not for food. */
  static final AttributeKey<Double> PLANT_FACTOR =
      new AttributeKey<>("water.plant-factor", Double.class);

  /** What the plan asks for. */
  static final AttributeKey<Allowance> ALLOWANCE =
      new AttributeKey<>("water.allowance", Allowance.class);

  private AllowanceWords() {}

  /**
   * The request.
   *
   * @param factor ET adjustment factor of the code
   * @param efficiency of the irrigation
   * @param yearlyEt the code's reference ET; null for that of the climate
   * @param hasRainCredit whether a quarter of the year's rain counts
   */
  record Allowance(double factor, double efficiency, Length yearlyEt, boolean hasRainCredit) {}

  @Verb(
      help =
          "Prints the yearly allowance and the estimated use of water as California's model"
              + " ordinance asks for them.",
      example = "waterAllowance factor: 0.55")
  public static void waterAllowance(
      PlanScope in,
      @Opt(
              name = "factor",
              help = "ET adjustment factor of the code, 0.1 to 1",
              fallback = "0.55, the most for homes")
          Number factor,
      @Opt(
              name = "efficiency",
              help = "of the irrigation, 0.3 to 1",
              fallback = "0.81, the least for drip")
          Number efficiency,
      @Opt(
              name = "yearlyEt",
              help = "reference ET of a year that the code names for the place",
              fallback = "that of the climate")
          Length yearlyEt,
      @Opt(
              name = "rainCredit",
              help = "whether the code takes a quarter of the year's rain off",
              fallback = "false")
          Boolean rainCredit) {
    double f = share(in, "factor", factor, WaterBudget.HOME_FACTOR, 0.1, 1);
    double e = share(in, "efficiency", efficiency, WaterBudget.DRIP_EFFICIENCY, 0.3, 1);
    if (yearlyEt != null && (yearlyEt.inches() < 1 || yearlyEt.inches() > 150)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`yearlyEt:` is 1 in (25 mm) to 150 in (3810 mm), got "
              + Say.both(Measure.RAIN, yearlyEt));
    }
    Making.once(in, ALLOWANCE, a -> true, "`waterAllowance`");
    in.draft()
        .attributes()
        .add(ALLOWANCE, new Allowance(f, e, yearlyEt, Boolean.TRUE.equals(rainCredit)), in.place());
  }

  @Verb(
      help =
          "Says that the bed grows ornamentals, not food, with this plant factor for the water"
              + " allowance.",
      example = "plantFactor 0.3")
  public static void plantFactor(
      BedScope in,
      @Arg(name = "factor", help = "use over reference ET: low 0.3, moderate 0.5, high 0.8")
          Number factor) {
    double value = share(in, "plantFactor", factor, 0, 0, 1);
    in.element().attributes().add(PLANT_FACTOR, value, in.place());
  }

  private static double share(
      Scope in, String name, Number given, double usual, double least, double most) {
    double value = given == null ? usual : given.doubleValue();
    if (!(value >= least && value <= most)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "`" + name + "` is a share from " + least + " to " + most + ", got " + given);
    }
    return value;
  }
}
