package yardloom.sheet.label;

import java.util.Arrays;
import java.util.List;
import yardloom.sheet.label.Linework.Segment;
import yardloom.sheet.paper.Box;

/**
 * Segments by the square cells that their boxes reach into, for many questions about small parts of
 * a drawing. What lies outside the drawing is kept in the cells along its edge. Not thread-safe.
 */
final class SegmentGrid {
  private static final double CELL_MM = 6;

  private final Box area;
  private final int columns;
  private final int rows;
  private final Segment[] segments;

  /** Where the segments of each cell begin in {@link #members}; one more than there are cells. */
  private final int[] starts;

  private final int[] members;

  /**
   * Left, top, right and bottom of each segment, one after the other: most are ruled out by them.
   */
  private final double[] bounds;

  /** The question in which each segment was told last, so that it is told once. */
  private final int[] told;

  private int question;

  SegmentGrid(Box area, List<Segment> segments) {
    this.area = area;
    this.segments = segments.toArray(new Segment[0]);
    columns = 1 + (int) (area.width() / CELL_MM);
    rows = 1 + (int) (area.height() / CELL_MM);
    told = new int[segments.size()];
    bounds = new double[4 * segments.size()];
    int[] counts = new int[columns * rows + 1];
    for (Segment s : segments) {
      eachCell(s.left(), s.top(), s.right(), s.bottom(), cell -> counts[cell + 1]++);
    }
    Arrays.parallelPrefix(counts, Integer::sum);
    starts = counts;
    members = new int[counts[counts.length - 1]];
    int[] next = Arrays.copyOf(starts, columns * rows);
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      int member = i;
      bounds[4 * i] = s.left();
      bounds[4 * i + 1] = s.top();
      bounds[4 * i + 2] = s.right();
      bounds[4 * i + 3] = s.bottom();
      eachCell(s.left(), s.top(), s.right(), s.bottom(), cell -> members[next[cell]++] = member);
    }
  }

  /** What is done with a cell. */
  private interface CellTask {
    void cell(int index);
  }

  /** What is done with a segment that is near; false if no other has to be told. */
  interface Teller {
    boolean tell(Segment segment);
  }

  /** Tells each segment once whose bounds meet the rectangle: all that meet it, and some more. */
  void near(double left, double top, double right, double bottom, Teller teller) {
    question++;
    int lastColumn = column(right);
    int lastRow = row(bottom);
    for (int r = row(top); r <= lastRow; r++) {
      for (int c = column(left); c <= lastColumn; c++) {
        int cell = r * columns + c;
        for (int m = starts[cell]; m < starts[cell + 1]; m++) {
          int i = members[m];
          if (told[i] != question) {
            told[i] = question;
            boolean meets =
                bounds[4 * i] <= right
                    && bounds[4 * i + 1] <= bottom
                    && bounds[4 * i + 2] >= left
                    && bounds[4 * i + 3] >= top;
            if (meets && !teller.tell(segments[i])) {
              return;
            }
          }
        }
      }
    }
  }

  private void eachCell(double left, double top, double right, double bottom, CellTask task) {
    int lastColumn = column(right);
    int lastRow = row(bottom);
    for (int r = row(top); r <= lastRow; r++) {
      for (int c = column(left); c <= lastColumn; c++) {
        task.cell(r * columns + c);
      }
    }
  }

  private int column(double x) {
    return Math.min(columns - 1, Math.max(0, (int) ((x - area.x()) / CELL_MM)));
  }

  private int row(double y) {
    return Math.min(rows - 1, Math.max(0, (int) ((y - area.y()) / CELL_MM)));
  }
}
