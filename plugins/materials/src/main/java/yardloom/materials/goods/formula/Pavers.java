package yardloom.materials.goods.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * Pieces and layers of paved ground.
 *
 * <p>Pieces = area / piece, plus a share for cuts and breakage, rounded up. Excavation = paver +
 * bedding + base. Pieces of no size and shares outside 0 to 1 are OUT_OF_RANGE.
 *
 * <p>References: [1] interlocking paver practice, ICPI (CMHA) Tech Spec 2 as quoted on public pages
 * (not read itself): 4 in compacted base and 1 in bedding sand for foot traffic, 6 in for drives.
 */
public final class Pavers {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Tech Spec 2, as quoted on public pages (second hand)",
          "Interlocking Concrete Pavement Institute",
          0,
          "base and bedding");

  /** Bedding sand under pavers. */
  public static final Length BEDDING = Length.inches(1);

  private static final double EPS = 1e-9;

  private Pavers() {}

  /** Whether feet or cars go over it. */
  public enum Traffic {
    FOOT(4),
    DRIVE(6);

    private final Length base;

    Traffic(double inches) {
      base = Length.inches(inches);
    }

    /** Compacted base under the bedding. */
    public Length base() {
      return base;
    }
  }

  /** Pieces without waste. */
  public static double exact(Area ground, Length length, Length width) {
    Area piece = length.by(width);
    if (!(length.metres() > 0 && width.metres() > 0)) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a paver needs a length and a width");
    }
    return ground.ratioTo(piece);
  }

  public static int order(Area ground, Length length, Length width, double waste) {
    if (!(waste >= 0 && waste <= 1)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "waste is a share from 0 to 1, got " + waste);
    }
    return (int) Math.ceil(exact(ground, length, width) * (1 + waste) - EPS);
  }
}
