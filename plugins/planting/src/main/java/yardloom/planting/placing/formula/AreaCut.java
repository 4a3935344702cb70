package yardloom.planting.placing.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * Cuts a shape across a bearing into pieces of given shares of its area. Each cut is found by
 * halving, to a thousandth of a millimetre.
 *
 * <p>References: [1] Burden and Faires, Numerical Analysis, section 2.1, the bisection method (from
 * memory).
 */
public final class AreaCut {
  private static final double FINE_M = 1e-6;

  private final LongAxis axis;
  private final boolean turned;
  private final double lengthM;

  private AreaCut(Shape shape, Angle bearing) {
    axis = LongAxis.along(shape, bearing);
    // The axis points right, whatever the bearing.
    turned = StrictMath.cos(axis.bearing().radians() - bearing.radians()) < 0;
    lengthM = axis.length().metres();
  }

  /**
   * One piece for each share, from the end on that the bearing leads to.
   *
   * @param shares of the area, together 1
   */
  public static List<Shape> cut(Shape shape, Angle bearing, List<Double> shares) {
    AreaCut cut = new AreaCut(shape, bearing);
    double area = shape.area().squareMetres();
    List<Shape> pieces = new ArrayList<>();
    double begin = -1;
    double sum = 0;
    for (int i = 0; i < shares.size(); i++) {
      sum += shares.get(i);
      double end = i == shares.size() - 1 ? cut.lengthM + 1 : cut.at(area * sum);
      pieces.add(cut.piece(begin, end));
      begin = end;
    }
    return List.copyOf(pieces);
  }

  /** How far from the far end that much area lies. */
  private double at(double squareMetres) {
    double low = 0;
    double high = lengthM;
    while (high - low > FINE_M) {
      double middle = (low + high) / 2;
      boolean less = piece(-1, middle).area().squareMetres() < squareMetres;
      low = less ? middle : low;
      high = less ? high : middle;
    }
    return (low + high) / 2;
  }

  /** What lies between two distances from the far end. */
  private Shape piece(double from, double to) {
    return turned
        ? axis.slice(Length.metres(from), Length.metres(to))
        : axis.slice(Length.metres(lengthM - to), Length.metres(lengthM - from));
  }
}
