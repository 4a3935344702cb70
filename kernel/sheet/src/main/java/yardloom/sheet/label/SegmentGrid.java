package yardloom.sheet.label;

import java.util.Arrays;
import java.util.List;
import yardloom.sheet.label.Linework.Segment;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/** Segments by the {@link DrawingCells} that their boxes reach into. Not thread-safe. */
final class SegmentGrid {
  private static final double CELL_MM = 6;

  /** How far beside a line its cells are asked for, so that no rounding leaves one out. */
  private static final double DUST_MM = 1e-6;

  private final DrawingCells cells;
  private final Segment[] segments;

  /** Where the segments of each cell begin in {@link #members}; one more than there are cells. */
  private final int[] starts;

  private final int[] members;

  /**
   * Left, top, right and bottom of each member, one after the other: most are ruled out by them.
   */
  private final double[] bounds;

  /** The question in which each segment was told last, so that it is told once. */
  private final int[] told;

  private int question;

  SegmentGrid(Box area, List<Segment> segments) {
    cells = new DrawingCells(area, CELL_MM);
    this.segments = segments.toArray(new Segment[0]);
    told = new int[segments.size()];
    int[] counts = new int[cells.count() + 1];
    for (Segment s : segments) {
      cells.each(s.left(), s.top(), s.right(), s.bottom(), cell -> counts[cell + 1]++);
    }
    for (int i = 1; i < counts.length; i++) {
      counts[i] += counts[i - 1];
    }
    starts = counts;
    members = new int[counts[counts.length - 1]];
    bounds = new double[4 * members.length];
    int[] next = Arrays.copyOf(starts, cells.count());
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      int member = i;
      cells.each(s.left(), s.top(), s.right(), s.bottom(), cell -> put(next[cell]++, member, s));
    }
  }

  private void put(int at, int member, Segment s) {
    members[at] = member;
    bounds[4 * at] = s.left();
    bounds[4 * at + 1] = s.top();
    bounds[4 * at + 2] = s.right();
    bounds[4 * at + 3] = s.bottom();
  }

  /** What is done with a segment that is near; false if no other has to be told. */
  interface Teller {
    boolean tell(Segment segment);
  }

  /** Tells each segment once whose bounds meet the rectangle: all that meet it, and some more. */
  void near(double left, double top, double right, double bottom, Teller teller) {
    question++;
    int first = cells.column(left);
    int last = cells.column(right);
    int lastRow = cells.row(bottom);
    for (int row = cells.row(top); row <= lastRow; row++) {
      if (!row(row, first, last, left, top, right, bottom, teller)) {
        return;
      }
    }
  }

  /**
   * Tells each segment once whose bounds meet those of a line: all that cross it, and some more.
   */
  void along(Xy from, Xy to, Teller teller) {
    question++;
    Segment line = new Segment(from, to, Linework.Kind.LINE);
    double slope = to.y() == from.y() ? 0 : (to.x() - from.x()) / (to.y() - from.y());
    int firstRow = cells.row(line.top() - DUST_MM);
    int lastRow = cells.row(line.bottom() + DUST_MM);
    for (int row = firstRow; row <= lastRow; row++) {
      double left = line.left();
      double right = line.right();
      if (slope != 0) {
        // What lies outside the drawing belongs to its first and last rows.
        double top = row == firstRow ? line.top() : cells.top(row);
        double bottom = row == lastRow ? line.bottom() : cells.top(row + 1);
        double atTop = from.x() + slope * (top - from.y());
        double atBottom = from.x() + slope * (bottom - from.y());
        left = Math.max(left, Math.min(atTop, atBottom));
        right = Math.min(right, Math.max(atTop, atBottom));
      }
      int first = cells.column(left - DUST_MM);
      int last = cells.column(right + DUST_MM);
      if (!row(row, first, last, line.left(), line.top(), line.right(), line.bottom(), teller)) {
        return;
      }
    }
  }

  /** Tells those of some cells that lie beside each other; false if no other has to be told. */
  private boolean row(
      int row,
      int first,
      int last,
      double left,
      double top,
      double right,
      double bottom,
      Teller teller) {
    int end = starts[cells.at(last, row) + 1];
    for (int m = starts[cells.at(first, row)]; m < end; m++) {
      boolean meets =
          bounds[4 * m] <= right
              && bounds[4 * m + 1] <= bottom
              && bounds[4 * m + 2] >= left
              && bounds[4 * m + 3] >= top;
      if (meets && told[members[m]] != question) {
        told[members[m]] = question;
        if (!teller.tell(segments[members[m]])) {
          return false;
        }
      }
    }
    return true;
  }
}
