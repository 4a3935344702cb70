package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How wide the columns of a table are.
 *
 * @param leastMm what the longest word or number of each needs
 * @param naturalMm what each takes if nothing wraps
 */
record ColumnWidths(double[] leastMm, double[] naturalMm) {
  /** For each millimetre of the height of capitals. */
  private static final double READABLE_PER_LETTER = 12.5;

  /** Long texts ask for a column in which they take no more than so many lines, up to a limit. */
  private static final double LINES_OF_LONG_TEXT = 3.5;

  private static final double LONGEST_LINE_MM = 60;

  double sumOfLeast() {
    return Arrays.stream(leastMm).sum();
  }

  /** The width that the table had better have: text of one-word lines reads badly. */
  double comfortable(double letterMm) {
    double sum = 0;
    for (int i = 0; i < leastMm.length; i++) {
      double few = Math.min(naturalMm[i] / LINES_OF_LONG_TEXT, LONGEST_LINE_MM);
      sum +=
          Math.max(
              leastMm[i], Math.min(naturalMm[i], Math.max(READABLE_PER_LETTER * letterMm, few)));
    }
    return sum;
  }

  /** Column widths that add up to {@code totalMm}. */
  double[] of(double totalMm) {
    double[] widths = leastMm.clone();
    double left = totalMm - sumOfLeast();
    if (left <= 0) {
      return Arrays.stream(leastMm).map(w -> w + left * w / (totalMm - left)).toArray();
    }
    // Those that want least are satisfied first; what all others get is equal.
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < widths.length; i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble((Integer i) -> naturalMm[i] - leastMm[i]));
    double rest = left;
    for (int k = 0; k < order.size(); k++) {
      int i = order.get(k);
      double given = Math.min(naturalMm[i] - leastMm[i], rest / (order.size() - k));
      widths[i] += given;
      rest -= given;
    }
    // A column of ticks gains nothing from room that a text could have.
    double all = Arrays.stream(widths).sum();
    for (int i = 0; i < widths.length; i++) {
      widths[i] *= 1 + rest / all;
    }
    return widths;
  }
}
