package yardloom.soil.compost.formula;

import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Mass;

/**
 * Carbon to nitrogen and moisture of a compost mix, and the mass of a partner that reaches a goal.
 *
 * <p>R = Σ Q C (100 − M) / Σ Q N (100 − M) with wet mass Q, carbon C and nitrogen N in percent of
 * dry matter, moisture M in percent of wet mass; M of the mix = Σ Q M / Σ Q. The partner's mass
 * solves the same equation. Two materials on the same side of the goal have no positive solution:
 * CONTRADICTION. No material, no nitrogen, or moisture outside 0 to 100 is OUT_OF_RANGE.
 *
 * <p>References: [1] Cornell Waste Management Institute, compost calculations, symbols Q, C, N, M
 * (the equations from memory, checked by substitution). [2] L. Cooperband, The Art and Science of
 * Composting, University of Wisconsin CIAS, 2002, table 1 (limits).
 */
public final class CompostMix {
  /** Printed beside ratio results. */
  public static final Source SOURCE =
      Source.computed("Compost mix calculations", "Cornell Waste Management Institute", 0, "");

  private CompostMix() {}

  /**
   * A material in the mix.
   *
   * @param carbon percent of dry matter
   * @param nitrogen percent of dry matter
   * @param moisture percent of wet mass
   */
  public record Feed(String name, Mass wet, double carbon, double nitrogen, double moisture) {
    public Feed {
      boolean shares = carbon >= 0 && carbon <= 100 && nitrogen >= 0 && nitrogen <= 100;
      if (!shares || !(moisture >= 0 && moisture < 100) || wet.kilograms() < 0) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            name
                + ": carbon and nitrogen are percent of dry matter, moisture is below 100 percent");
      }
    }

    /** From a C:N ratio instead of carbon. */
    public static Feed ofRatio(
        String name, Mass wet, double ratio, double nitrogen, double moisture) {
      return new Feed(name, wet, ratio * nitrogen, nitrogen, moisture);
    }

    /** One of the shipped materials. */
    public static Feed shipped(String name, Mass wet) {
      FeedstockData.Feedstock f = FeedstockData.of(name);
      return ofRatio(name, wet, f.ratio(), f.nitrogen(), f.moisture());
    }

    private double dryShare() {
      return 100 - moisture;
    }
  }

  /** How good a value is for composting. */
  public enum Grade {
    IDEAL,
    ACCEPTABLE,
    TOO_LOW,
    TOO_HIGH
  }

  public static double ratio(List<Feed> mix) {
    double carbon = 0;
    double nitrogen = 0;
    for (Feed f : mix) {
      carbon += f.wet().kilograms() * f.carbon() * f.dryShare();
      nitrogen += f.wet().kilograms() * f.nitrogen() * f.dryShare();
    }
    if (!(nitrogen > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a mix without nitrogen has no carbon to nitrogen ratio");
    }
    return carbon / nitrogen;
  }

  /** Percent of wet mass. */
  public static double moisture(List<Feed> mix) {
    double water = 0;
    double total = 0;
    for (Feed f : mix) {
      water += f.wet().kilograms() * f.moisture();
      total += f.wet().kilograms();
    }
    if (!(total > 0)) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "an empty mix has no moisture");
    }
    return water / total;
  }

  /** The wet mass of {@code partner} that brings the mix with {@code given} to {@code goal}. */
  public static Mass partnerForRatio(Feed given, Feed partner, double goal) {
    double lack =
        given.wet().kilograms() * given.dryShare() * (goal * given.nitrogen() - given.carbon());
    double gain = partner.dryShare() * (partner.carbon() - goal * partner.nitrogen());
    return partner(given, partner, lack / gain, "C:N " + Math.round(goal));
  }

  private static Mass partner(Feed given, Feed partner, double kg, String goal) {
    if (!(kg > 0) || Double.isInfinite(kg)) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "no amount of "
              + partner.name()
              + " brings "
              + given.name()
              + " to "
              + goal
              + ": both lie on the same side of the goal; choose another partner");
    }
    return Mass.kilograms(kg);
  }

  public static Grade gradeRatio(double ratio) {
    return grade(ratio, 20, 25, 35, 40);
  }

  public static Grade gradeMoisture(double percent) {
    return grade(percent, 40, 45, 60, 65);
  }

  private static Grade grade(double value, double low, double good, double rich, double high) {
    if (value < low) {
      return Grade.TOO_LOW;
    }
    if (value > high) {
      return Grade.TOO_HIGH;
    }
    return value >= good && value <= rich ? Grade.IDEAL : Grade.ACCEPTABLE;
  }
}
