package yardloom.program.report;

import java.util.List;

/**
 * All that the page says. Names are those of the templates; texts are plain, and only {@code svg},
 * {@code style} and {@code script} are markup.
 *
 * @param facts what the title block says
 * @param cover the picture that the page begins with; none or one
 * @param keyFigures tables that stand under it
 * @param wanted cautions before anybody digs
 * @param cautions all others
 */
record ReportPage(
    String title,
    List<Fact> facts,
    List<SheetView> cover,
    List<TableView> keyFigures,
    List<CautionView> wanted,
    List<CautionView> cautions,
    FindingsView findings,
    List<ChartView> charts,
    List<LayerMap> map,
    List<SheetView> sheets,
    List<Group> groups,
    List<MonthView> calendar,
    List<String> sources,
    String style,
    String script) {

  /** A name and what it stands for. */
  record Fact(String name, String value) {}

  /** A caution with who says so. */
  record CautionView(String text, String source) {}

  /** Tables of one kind of reader. */
  record Group(String id, String title, int count, List<TableView> tables) {}

  /** What is to be done from days of one month on. */
  record MonthView(String id, String title, List<DayView> entries) {}

  /** One entry of the calendar. */
  record DayView(String days, String title, String text) {}

  boolean hasCautions() {
    return !wanted.isEmpty() || !cautions.isEmpty();
  }

  boolean hasMoreCautions() {
    return !cautions.isEmpty();
  }

  boolean hasCharts() {
    return !charts.isEmpty();
  }

  boolean hasMap() {
    return !map.isEmpty();
  }

  boolean hasSheets() {
    return !sheets.isEmpty();
  }

  boolean hasTables() {
    return !groups.isEmpty();
  }

  boolean hasCalendar() {
    return !calendar.isEmpty();
  }

  boolean hasSources() {
    return !sources.isEmpty();
  }
}
