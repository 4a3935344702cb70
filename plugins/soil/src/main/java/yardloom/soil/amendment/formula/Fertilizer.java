package yardloom.soil.amendment.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;

/**
 * Plant food in and from products sold by grade.
 *
 * <p>A grade N-P-K states percent by mass of nitrogen, P₂O₅ and K₂O. Shares of 0 to 100, nitrogen
 * above zero where a product is asked for; otherwise OUT_OF_RANGE.
 *
 * <p>References: [1] University of Maine Cooperative Extension, Bulletin 2287 (grades).
 */
public final class Fertilizer {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read("Bulletin 2287", "University of Maine Cooperative Extension", 0, "");

  /** No solid garden fertilizer holds more nitrogen than urea. */
  private static final double MOST_NITROGEN = 46.7;

  private Fertilizer() {}

  /** What a bag states. */
  public record Grade(double nitrogen, double phosphate, double potash) {
    public Grade {
      boolean shares = nitrogen >= 0 && phosphate >= 0 && potash >= 0;
      if (!shares || !(nitrogen + phosphate + potash <= 100) || nitrogen > MOST_NITROGEN) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "a grade states percent of N (at most 46 as in urea), P2O5 and K2O with a sum up to"
                + " 100, got "
                + nitrogen
                + "-"
                + phosphate
                + "-"
                + potash);
      }
    }

    /**
     * Reads a grade as bags print it, such as {@code 5-10-10}.
     *
     * @throws PlanException (WRONG_TYPE) if it is not three numbers joined by hyphens
     */
    public static Grade parse(String text) {
      String[] parts = text.split("-");
      try {
        if (parts.length == 3) {
          return new Grade(
              Double.parseDouble(parts[0]),
              Double.parseDouble(parts[1]),
              Double.parseDouble(parts[2]));
        }
      } catch (NumberFormatException e) {
        // Reported below, as for a wrong count of parts.
      }
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          "'" + text + "' is not a fertilizer grade; write three numbers, such as '5-10-10'");
    }
  }

  /** Product that brings {@code nitrogen}. */
  public static Mass productFor(Mass nitrogen, Grade grade) {
    if (!(grade.nitrogen() > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a product without nitrogen cannot bring nitrogen");
    }
    return nitrogen.times(100 / grade.nitrogen());
  }
}
