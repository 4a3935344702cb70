package yardloom.program.report;

import java.util.List;

/**
 * The findings.
 *
 * @param summary how many of each kind
 * @param first what must be changed, and the first of what should be: shown at once
 * @param more the others: folded
 */
record FindingsView(String summary, List<Item> first, List<Item> more) {

  /**
   * Findings of one text under their number on the sheets.
   *
   * @param places where it holds
   * @param pictures details of the map around the marked ground
   * @param foot rule, lines of the script and source
   */
  record Item(
      int number,
      String severity,
      String places,
      String text,
      String advice,
      List<Detail> pictures,
      String foot) {}

  /**
   * A detail of the map, drawn by reference to it.
   *
   * @param hrefs of groups of the map
   * @param frame the marked ground in it
   */
  record Detail(String label, List<String> hrefs, String viewBox, Frame frame) {}

  /** A rectangle in the map's millimetres. */
  record Frame(String x, String y, String width, String height) {}

  boolean none() {
    return first.isEmpty() && more.isEmpty();
  }

  boolean hasFirst() {
    return !first.isEmpty();
  }

  boolean hasMore() {
    return !more.isEmpty();
  }

  int moreCount() {
    return more.size();
  }
}
