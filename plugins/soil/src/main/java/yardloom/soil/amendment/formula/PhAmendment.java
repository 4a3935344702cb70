package yardloom.soil.amendment.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;

/**
 * Sulfur to lower the pH of garden soil, and what impure lime takes.
 *
 * <p>Sulfur: 2.0 lb per 1000 sq ft for each tenth of a pH unit on silt loam, a third more on clay,
 * a third less on sand; above 30 lb per 1000 sq ft two thirds first and the rest after a retest in
 * about three months. A starting point. A target on the wrong side is OUT_OF_RANGE; the same pH
 * needs nothing. Lime is in {@link LimeByTexture} and {@link BufferLime}.
 *
 * <p>References: [1] University of Tennessee UTcrops, Blueberries, note 1. [2] Penn State
 * Agricultural Analytical Services Laboratory, home garden report (calcium carbonate equivalent).
 */
public final class PhAmendment {
  /** Printed beside sulfur results. */
  public static final Source SULFUR =
      Source.read("Blueberries, note 1", "University of Tennessee UTcrops", 0, "");

  /** Printed beside corrections for the purity of lime. */
  public static final Source PURITY =
      Source.read(
          "Home garden soil test report",
          "Penn State Agricultural Analytical Services Laboratory",
          0,
          "calcium carbonate equivalent");

  private static final double LB_PER_TENTH = 2.0;
  private static final double SPLIT_ABOVE_LB = 30;
  private static final Area THOUSAND = Area.squareFeet(1000);

  private PhAmendment() {}

  /** Soils that the sulfur rule tells apart. */
  public enum Ground {
    SAND(2.0 / 3),
    SILT_LOAM(1),
    CLAY(4.0 / 3);

    private final double factor;

    Ground(double factor) {
      this.factor = factor;
    }
  }

  /**
   * Sulfur in one or two doses.
   *
   * @param later zero unless the total is to be split
   */
  public record Doses(Mass first, Mass later) {
  }

  public static Doses sulfur(double phNow, double phWanted, Ground ground, Area area) {
    if (!(phWanted <= phNow && phNow <= 10 && phWanted >= 3.5)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "sulfur lowers the pH: the wanted pH must lie between 3.5 and the present "
              + phNow
              + ", got "
              + phWanted);
    }
    double lbPer1000 = (phNow - phWanted) * 10 * LB_PER_TENTH * ground.factor;
    Mass total = Mass.pounds(lbPer1000 * area.ratioTo(THOUSAND));
    if (lbPer1000 <= SPLIT_ABOVE_LB) {
      return new Doses(total, Mass.ZERO);
    }
    return new Doses(total.times(2.0 / 3), total.times(1.0 / 3));
  }

  /** Product to spread so that {@code pure} carbonate reaches the soil. */
  public static Mass correctedForPurity(Mass pure, double equivalentPercent) {
    if (!(equivalentPercent > 0 && equivalentPercent <= 180)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a calcium carbonate equivalent lies between 0 and 180 percent, got "
              + equivalentPercent);
    }
    return pure.times(100 / equivalentPercent);
  }
}
