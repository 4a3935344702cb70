package yardloom.water.drip.formula;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Loops;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Rows of dripline in a bed, all inside it. With straight sides: parallel to the long side, as many
 * as the width divided by the row spacing, rounded, centred, so that the outer rows lie about half
 * a row spacing from the edge. In a round, ring or curved bed: along its outline, see {@link
 * Loops}.
 *
 * <p>Every part of a bed has at least one row. A piece of a row with no room for an outlet is left
 * out.
 *
 * <p>References: common practice, no source.
 */
public final class DripLayout {
  private static final double ROUNDING_SLACK = 1e-6;

  private DripLayout() {}

  /** The rows along the bed, part by part; none in an empty bed. */
  public static List<Line> rows(Shape bed, Length rowSpacing, Length outletSpacing) {
    return rows(bed, rowSpacing, outletSpacing, Optional.empty());
  }

  /** The same along a bearing, if there is one, in parts with straight sides. */
  public static List<Line> rows(
      Shape bed, Length rowSpacing, Length outletSpacing, Optional<Angle> bearing) {
    if (rowSpacing.metres() <= 0 || outletSpacing.metres() <= 0) {
      throw new IllegalArgumentException("spacings must be positive");
    }
    List<Line> rows = new ArrayList<>();
    List<Shape> parts = new ArrayList<>(bed.parts());
    parts.sort(Comparator.comparing((Shape p) -> p.bounds().getMinX()));
    for (Shape part : parts) {
      List<Line> laid =
          Loops.isCurved(part) ? Loops.of(part, rowSpacing) : straight(part, rowSpacing, bearing);
      for (Line row : laid) {
        if (outlets(row.length(), outletSpacing) > 0) {
          rows.add(row);
        }
      }
    }
    return List.copyOf(rows);
  }

  private static List<Line> straight(Shape bed, Length rowSpacing, Optional<Angle> bearing) {
    LongAxis axis = bearing.map(b -> LongAxis.along(bed, b)).orElseGet(() -> LongAxis.of(bed));
    // A hair above the half, so that a bed and its turned copy have as many rows.
    double rounded = Math.floor(axis.width().ratioTo(rowSpacing) + 0.5 + ROUNDING_SLACK);
    double count = Math.max(1, rounded);
    Length first = axis.width().minus(rowSpacing.times(count - 1)).div(2);
    List<Line> rows = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      rows.addAll(axis.row(first.plus(rowSpacing.times(i))));
    }
    return rows;
  }

  /** Outlets of one row: the first half a spacing from its start. */
  public static int outlets(Length row, Length spacing) {
    return (int) Math.floor(row.ratioTo(spacing) + 0.5 + ROUNDING_SLACK);
  }
}
