package yardloom.soil.amendment.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;

/**
 * Lime from a soil test's buffer pH (Mehlich buffer).
 *
 * <p>Acidity = 4 × (6.6 − buffer pH), milliequivalents in 100 cm³; US tons of lime an acre =
 * acidity × (target pH − pH) / (6.6 − pH). It holds for a target above the present pH and below
 * 6.6, and a buffer pH from 4 up to 6.6, at which no lime is needed; anything else is OUT_OF_RANGE.
 * Other buffers (SMP, Adams-Evans) have other tables: the laboratory says which it used.
 *
 * <p>References: [1] North Carolina Department of Agriculture, Agronomic Division, table of lime
 * factors for the Mehlich buffer (its worked example prints 0.76 ton for 1.2 × 0.625 = 0.75).
 */
public final class BufferLime {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Lime requirement by Mehlich buffer pH",
          "North Carolina Department of Agriculture, Agronomic Division",
          0,
          "note to the table of factors");

  private static final double NEUTRALISED = 6.6;
  private static final double LEAST_BUFFER = 4;
  private static final Area ACRE = Area.squareFeet(43_560);
  private static final double LB_PER_TON = 2000;

  private BufferLime() {}

  /** Milliequivalents of acidity in 100 cm³ of soil. */
  public static double acidity(double bufferPh) {
    if (!(bufferPh >= LEAST_BUFFER && bufferPh <= NEUTRALISED)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "a Mehlich buffer pH lies between 4 and 6.6, got "
              + bufferPh
              + "; ask the laboratory which buffer it used");
    }
    return 4 * (NEUTRALISED - bufferPh);
  }

  /** Ground limestone, as pure carbonate, to bring {@code area} from {@code ph} to the target. */
  public static Mass lime(double ph, double targetPh, double bufferPh, Area area) {
    if (!(ph >= 3 && targetPh >= ph && targetPh < NEUTRALISED)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "by buffer pH, lime raises the pH to a target below 6.6; got " + ph + " to " + targetPh);
    }
    double tonsPerAcre = acidity(bufferPh) * (targetPh - ph) / (NEUTRALISED - ph);
    return Mass.pounds(tonsPerAcre * LB_PER_TON * area.ratioTo(ACRE));
  }
}
