package yardloom.facts;

import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * One number for each square cell of the ground. Immutable.
 *
 * <p>Rows run up the plan, columns to the right; a cell's value stands for its centre. Cells may be
 * left out, such as those under a house.
 */
public final class Field {
  private static final double LEFT_OUT = Double.NEGATIVE_INFINITY;

  private final Point corner;
  private final Length cell;
  private final int columns;
  private final int rows;
  private final double[] values;

  private Field(Point corner, Length cell, int columns, int rows, double[] values) {
    this.corner = corner;
    this.cell = cell;
    this.columns = columns;
    this.rows = rows;
    this.values = values;
  }

  /**
   * A field with the values of {@code valueAt(row * columns + column)}; {@link
   * Double#NEGATIVE_INFINITY} leaves a cell out.
   *
   * @param corner the lower left corner of the first cell
   */
  public static Field of(
      Point corner, Length cell, int columns, int rows, IntToDoubleFunction valueAt) {
    if (cell.metres() <= 0 || columns < 1 || rows < 1) {
      throw new IllegalArgumentException(
          "a field needs cells: " + columns + " by " + rows + " of " + cell);
    }
    double[] values = new double[columns * rows];
    for (int i = 0; i < values.length; i++) {
      values[i] = valueAt.applyAsDouble(i);
      if (Double.isNaN(values[i]) || values[i] == Double.POSITIVE_INFINITY) {
        throw new IllegalArgumentException("cell " + i + " of a field is " + values[i]);
      }
    }
    return new Field(corner, cell, columns, rows, values);
  }

  public Point corner() {
    return corner;
  }

  public Length cell() {
    return cell;
  }

  public int columns() {
    return columns;
  }

  public int rows() {
    return rows;
  }

  /** The value of a cell; empty if it is left out or outside the field. */
  public OptionalDouble at(int column, int row) {
    if (column < 0 || row < 0 || column >= columns || row >= rows) {
      return OptionalDouble.empty();
    }
    double value = values[row * columns + column];
    return value == LEFT_OUT ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  /** The value of the cell in which the point lies. */
  public OptionalDouble at(Point point) {
    return at(
        index(point.x().metres() - corner.x().metres()),
        index(point.y().metres() - corner.y().metres()));
  }

  private int index(double fromCornerM) {
    return (int) Math.floor(fromCornerM / cell.metres());
  }

  public Point centre(int column, int row) {
    return corner.moved(cell.times(column + 0.5), cell.times(row + 0.5));
  }

  /**
   * The mean over the cells whose centre lies in {@code shape}; for a shape that holds no centre,
   * the value at its inmost point. Empty if all of these cells are left out.
   */
  public OptionalDouble mean(Shape shape) {
    if (shape.isEmpty()) {
      return OptionalDouble.empty();
    }
    double sum = 0;
    int count = 0;
    boolean holdsCentre = false;
    Predicate<Point> inside = shape.insideTest();
    Envelope bounds = shape.bounds();
    int lastColumn = Math.min(columns - 1, index(bounds.getMaxX() - corner.x().metres()));
    int lastRow = Math.min(rows - 1, index(bounds.getMaxY() - corner.y().metres()));
    int firstColumn = Math.max(0, index(bounds.getMinX() - corner.x().metres()));
    for (int r = Math.max(0, index(bounds.getMinY() - corner.y().metres())); r <= lastRow; r++) {
      for (int c = firstColumn; c <= lastColumn; c++) {
        if (inside.test(centre(c, r))) {
          holdsCentre = true;
          OptionalDouble value = at(c, r);
          sum += value.orElse(0);
          count += value.isPresent() ? 1 : 0;
        }
      }
    }
    if (!holdsCentre) {
      return at(shape.heart());
    }
    return count == 0 ? OptionalDouble.empty() : OptionalDouble.of(sum / count);
  }
}
