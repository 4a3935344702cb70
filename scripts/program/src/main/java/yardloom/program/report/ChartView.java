package yardloom.program.report;

import java.util.List;

/**
 * A chart as a drawing: shapes in the units of its view box, which on a telephone are about dots.
 *
 * @param text all figures of the chart in words, for readers who cannot see it
 * @param note what to know when reading it; may be empty
 * @param table id of the table whose figures these are
 * @param tableTitle how that is called
 */
record ChartView(
    String id,
    String title,
    String text,
    String note,
    String table,
    String tableTitle,
    double width,
    double height,
    List<Rect> rects,
    List<Segment> segments,
    List<Words> words,
    List<Key> keys) {

  /**
   * @param style class of the style sheet
   * @param tip what it stands for; may be empty
   */
  record Rect(
      String x, String y, String width, String height, String style, String fill, String tip) {}

  /** A straight line. */
  record Segment(String x1, String y1, String x2, String y2, String style) {}

  /**
   * @param anchor start, middle or end
   */
  record Words(String x, String y, String anchor, String style, String text) {}

  /** What a kind of bar or mark means. */
  record Key(String fill, String style, String text) {}

  boolean hasKeys() {
    return !keys.isEmpty();
  }
}
