package yardloom.sheet.label;

import java.util.Arrays;
import java.util.List;
import yardloom.sheet.label.Linework.Segment;
import yardloom.sheet.paper.Box;

/** Segments by the {@link DrawingCells} that their boxes reach into. Not thread-safe. */
final class SegmentGrid {
  private static final double CELL_MM = 6;

  private final DrawingCells cells;
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
    cells = new DrawingCells(area, CELL_MM);
    this.segments = segments.toArray(new Segment[0]);
    told = new int[segments.size()];
    bounds = new double[4 * segments.size()];
    int[] counts = new int[cells.count() + 1];
    for (Segment s : segments) {
      cells.each(s.left(), s.top(), s.right(), s.bottom(), cell -> counts[cell + 1]++);
    }
    Arrays.parallelPrefix(counts, Integer::sum);
    starts = counts;
    members = new int[counts[counts.length - 1]];
    int[] next = Arrays.copyOf(starts, cells.count());
    for (int i = 0; i < segments.size(); i++) {
      Segment s = segments.get(i);
      int member = i;
      bounds[4 * i] = s.left();
      bounds[4 * i + 1] = s.top();
      bounds[4 * i + 2] = s.right();
      bounds[4 * i + 3] = s.bottom();
      cells.each(s.left(), s.top(), s.right(), s.bottom(), cell -> members[next[cell]++] = member);
    }
  }

  /** What is done with a segment that is near; false if no other has to be told. */
  interface Teller {
    boolean tell(Segment segment);
  }

  /** Tells each segment once whose bounds meet the rectangle: all that meet it, and some more. */
  void near(double left, double top, double right, double bottom, Teller teller) {
    question++;
    cells.any(
        left,
        top,
        right,
        bottom,
        cell -> {
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
                return true;
              }
            }
          }
          return false;
        });
  }
}
