package yardloom.planting.harvest.formula;

import yardloom.kernel.unit.Length;

/**
 * How much of a yield told for open rows plants keep when their rows stand closer.
 *
 * <p>Rows that stand closer share light and soil, so that all between the first and the last row
 * count for as many as would stand there at the usual distance; a single row keeps all. 1 for rows
 * at the usual distance or wider.
 *
 * <p>References: common practice, no source; yields by the row are told for rows that people can
 * walk between.
 */
public final class Crowding {
  private static final double SLACK = 1e-6;

  private Crowding() {}

  /**
   * The share, above 0 and at most 1.
   *
   * @param width of the planted ground, across the rows
   * @param spacing half of it stays free at either edge
   */
  public static double share(Length width, Length spacing, Length rows, Length usualRows) {
    double between = Math.floor(Math.max(0, width.minus(spacing).ratioTo(rows)) + SLACK);
    return (1 + between * Math.min(1, rows.ratioTo(usualRows))) / (1 + between);
  }
}
