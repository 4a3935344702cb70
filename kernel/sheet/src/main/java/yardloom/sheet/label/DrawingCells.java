package yardloom.sheet.label;

import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import yardloom.sheet.paper.Box;

/**
 * Square cells over a drawing, numbered from 0, for many questions about small parts of it. What
 * lies outside the drawing belongs to the cells along its edge.
 */
record DrawingCells(Box area, double sizeMm, int columns, int rows) {
  DrawingCells(Box area, double sizeMm) {
    this(area, sizeMm, 1 + (int) (area.width() / sizeMm), 1 + (int) (area.height() / sizeMm));
  }

  int count() {
    return columns * rows;
  }

  /**
   * Whether one of the cells that a rectangle reaches into answers yes; the others are not asked.
   */
  boolean any(double left, double top, double right, double bottom, IntPredicate question) {
    int lastColumn = column(right);
    int lastRow = row(bottom);
    for (int r = row(top); r <= lastRow; r++) {
      for (int c = column(left); c <= lastColumn; c++) {
        if (question.test(r * columns + c)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Does something with each cell that a rectangle reaches into. */
  void each(double left, double top, double right, double bottom, IntConsumer task) {
    any(
        left,
        top,
        right,
        bottom,
        cell -> {
          task.accept(cell);
          return false;
        });
  }

  int at(int column, int row) {
    return row * columns + column;
  }

  /** Where a row begins. */
  double top(int row) {
    return area.y() + row * sizeMm;
  }

  int column(double x) {
    return Math.min(columns - 1, Math.max(0, (int) ((x - area.x()) / sizeMm)));
  }

  int row(double y) {
    return Math.min(rows - 1, Math.max(0, (int) ((y - area.y()) / sizeMm)));
  }
}
