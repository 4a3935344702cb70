package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Clearance;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * Where plants stand in a bed: the points of a lattice that keep half a spacing from every edge.
 *
 * <p>Rows run along the bed's long side. Of a few ways to lay the lattice (centred, or pushed to
 * either end and either side, either row shifted first) the one that holds most plants is taken,
 * centred before pushed. A bed narrower than one spacing holds none, but may hold {@link #oneRow}.
 * The count is exact for the lattice; area divided by the area of one plant over-counts, because
 * edge plants need their half spacing too.
 *
 * <p>References: common practice for square and staggered spacing; staggered rows are spacing × √3
 * / 2 apart unless given, which makes all six neighbours equally far.
 */
public final class Lattice {
  /**
   * How far a single row keeps from the bed's edge, as a share of its spacing: nothing stands
   * beside it, so its crowns may lean over (common practice, no source).
   */
  public static final double ROW_EDGE = 0.25;

  private static final double SLACK_M = 1e-6;
  private static final int MAX_POINTS = 50_000;

  private final Clearance clearance;
  private final LongAxis axis;
  private final double spacingM;
  private final double rowM;
  private final boolean staggered;

  private Lattice(Shape bed, Length spacing, Length rowSpacing, Layout layout) {
    clearance = Clearance.within(bed);
    axis = LongAxis.of(bed);
    spacingM = spacing.metres();
    rowM = rowSpacing.metres();
    staggered = layout == Layout.STAGGERED;
  }

  /** The distance of rows that belongs to a spacing when none is given. */
  public static Length rowSpacing(Length spacing, Layout layout) {
    return layout == Layout.STAGGERED ? spacing.times(Math.sqrt(3) / 2) : spacing;
  }

  /**
   * The places, row by row.
   *
   * @throws IllegalArgumentException if a spacing is not positive or so small that the bed would
   *     hold more than 50,000 plants
   */
  public static List<Point> points(Shape bed, Length spacing, Length rowSpacing, Layout layout) {
    if (spacing.metres() <= 0 || rowSpacing.metres() <= 0) {
      throw new IllegalArgumentException("spacing must be positive");
    }
    if (bed.isEmpty()) {
      return List.of();
    }
    if (bed.area().squareMetres() / (spacing.metres() * rowSpacing.metres()) > MAX_POINTS) {
      throw new IllegalArgumentException("more than " + MAX_POINTS + " plants in one bed");
    }
    return new Lattice(bed, spacing, rowSpacing, layout).best();
  }

  /**
   * The places of one row down the middle of a bed too narrow for a lattice, a spacing apart and
   * half a spacing from its ends.
   *
   * @param edge how far each place lies from the bed's edge at least
   */
  public static List<Point> oneRow(Shape bed, Length spacing, Length edge) {
    if (bed.isEmpty()) {
      return List.of();
    }
    LongAxis axis = LongAxis.of(bed);
    Clearance clearance = Clearance.within(bed);
    int count = (int) Math.floor((axis.length().metres() + SLACK_M) / spacing.metres());
    double from = (axis.length().metres() - (count - 1) * spacing.metres()) / 2;
    List<Point> found = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point p = axis.at(Length.metres(from + i * spacing.metres()), axis.width().div(2));
      if (clearance.of(p).metres() >= edge.metres() - SLACK_M) {
        found.add(p);
      }
    }
    return List.copyOf(found);
  }

  private List<Point> best() {
    double alongRoomM = axis.length().metres() - spacingM;
    double acrossRoomM = axis.width().metres() - spacingM;
    if (alongRoomM < -SLACK_M || acrossRoomM < -SLACK_M) {
      return List.of();
    }
    List<Point> best = List.of();
    for (double along : starts(alongRoomM, spacingM)) {
      for (double across : starts(acrossRoomM, rowM)) {
        for (int shiftedRow = 1; shiftedRow >= (staggered ? 0 : 1); shiftedRow--) {
          List<Point> found = lay(along, across, shiftedRow);
          if (found.size() > best.size()) {
            best = found;
          }
        }
      }
    }
    return List.copyOf(best);
  }

  /** Where the first lattice line may lie: centred, at the near edge, at the far edge. */
  private double[] starts(double roomM, double stepM) {
    double whole = Math.floor((roomM + SLACK_M) / stepM) * stepM;
    double spare = Math.max(0, roomM - whole);
    double first = spacingM / 2;
    return new double[] {first + spare / 2, first, first + spare};
  }

  private List<Point> lay(double alongStartM, double acrossStartM, int shiftedRow) {
    List<Point> found = new ArrayList<>();
    int row = 0;
    for (double across = acrossStartM; across <= axis.width().metres(); row++) {
      double shift = staggered && row % 2 == shiftedRow ? spacingM / 2 : 0;
      double from = alongStartM + shift - Math.ceil((alongStartM + shift) / spacingM) * spacingM;
      int steps = (int) Math.ceil((axis.length().metres() - from) / spacingM);
      for (int i = 0; i <= steps; i++) {
        Point p = axis.at(Length.metres(from + i * spacingM), Length.metres(across));
        if (clearance.of(p).metres() >= spacingM / 2 - SLACK_M) {
          found.add(p);
        }
      }
      across = acrossStartM + (row + 1) * rowM;
    }
    return found;
  }
}
