package yardloom.materials.surface.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * Sheets of cardboard that cover ground when neighbours lap.
 *
 * <p>Each sheet covers (l − o)(w − o) of new ground. Rectangles are laid as a grid, which needs
 * ceil((L − o)/(l − o)) · ceil((W − o)/(w − o)) sheets, the better of both directions; other
 * outlines are counted by area. Valid for 0 ≤ o < l, w; anything else is OUT_OF_RANGE. No ground
 * needs no sheets.
 *
 * <p>References: plane geometry; no publication is needed. An overlap of 6 in or more is common
 * practice.
 */
public final class Cardboard {
  /** Printed beside the results. */
  public static final Source SOURCE = Source.commonPractice("lapped sheets, plane geometry");

  // A bed that is a whole number of sheets must not need one more for the last rounding bit.
  private static final double EPS = 1e-9;

  private Cardboard() {}

  /** New ground that one lapped sheet covers. */
  public static Area effectiveArea(Length sheetLength, Length sheetWidth, Length overlap) {
    requireBelow(overlap, sheetLength.min(sheetWidth));
    return sheetLength.minus(overlap).by(sheetWidth.minus(overlap));
  }

  /** Sheets for any outline, by area. */
  public static int byArea(Area ground, Length sheetLength, Length sheetWidth, Length overlap) {
    return ceil(ground.ratioTo(effectiveArea(sheetLength, sheetWidth, overlap)));
  }

  /** Sheets for a rectangle laid as a grid, long or short side first, whichever needs fewer. */
  public static int byGrid(
      Length length, Length width, Length sheetLength, Length sheetWidth, Length overlap) {
    requireBelow(overlap, sheetLength.min(sheetWidth));
    int along = rows(length, sheetLength, overlap) * rows(width, sheetWidth, overlap);
    int across = rows(length, sheetWidth, overlap) * rows(width, sheetLength, overlap);
    return Math.min(along, across);
  }

  private static int rows(Length side, Length sheet, Length overlap) {
    return Math.max(1, ceil(side.minus(overlap).ratioTo(sheet.minus(overlap))));
  }

  private static int ceil(double value) {
    return (int) Math.ceil(value - EPS);
  }

  private static void requireBelow(Length overlap, Length side) {
    if (overlap.metres() < 0 || overlap.compareTo(side) >= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the overlap of sheets must be at least zero and below the sheet's shorter side "
              + side
              + ", got "
              + overlap);
    }
  }
}
