package yardloom.planting.bloom;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.planting.care.CareAct;
import yardloom.planting.strip.MonthStrip;

/**
 * When each kind of a grown garden blooms and is picked: a row for each, its bloom over its
 * harvest.
 */
public final class BloomFigure {
  private static final double NAMES_M = 36;
  private static final double MONTH_M = 5;
  private static final double BAR_M = 1.5;

  /**
   * The letters of large sheets need more room than those of pages, also where it is drawn small.
   */
  private static final double ROW_M = 5.4;

  private static final double ASIDE_M = 1;

  /** What fits under each other on a sheet of the usual size. */
  private static final int MOST_ROWS = 30;

  private static final Style BLOOM =
      Style.filled("bloom-days", Palette.PAPER).hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.18);
  private static final Style PICKED =
      Style.filled("picking-days", Palette.MUTED).outlined(Palette.INK, 0.18);

  private BloomFigure() {}

  private record Days(boolean picked, LocalDate from, LocalDate until) {}

  /** The chart, in pieces where it is long; none where nothing blooms or is picked. */
  public static List<Panel.Figure> of(Plan plan, Facts facts) {
    List<Map.Entry<String, List<Days>>> rows = new ArrayList<>(rows(plan, facts).entrySet());
    rows.sort(Comparator.comparing(e -> first(e.getValue())));
    List<Panel.Figure> figures = new ArrayList<>();
    for (int i = 0; i < rows.size(); i += MOST_ROWS) {
      String title = "In bloom and picked, once grown" + (i > 0 ? " (continued)" : "");
      figures.add(figure(title, rows.subList(i, Math.min(rows.size(), i + MOST_ROWS))));
    }
    return figures;
  }

  private static Map<String, List<Days>> rows(Plan plan, Facts facts) {
    Map<String, List<Days>> rows = new TreeMap<>();
    for (BloomYear.Kind kind : BloomYear.of(plan, facts)) {
      rows.computeIfAbsent(kind.plant(), k -> new ArrayList<>())
          .add(new Days(false, kind.from(), kind.until()));
    }
    for (CareAct act : facts.all(CareAct.KEY)) {
      if (act.isPicking() && act.when().season() == CareAct.GROWN) {
        for (String plant : act.plants()) {
          rows.computeIfAbsent(plant, k -> new ArrayList<>())
              .add(new Days(true, act.when().from(), act.when().until()));
        }
      }
    }
    return rows;
  }

  private static MonthDay first(List<Days> days) {
    return days.stream().map(d -> MonthDay.from(d.from())).min(MonthDay::compareTo).orElseThrow();
  }

  private static Panel.Figure figure(String title, List<Map.Entry<String, List<Days>>> rows) {
    MonthStrip strip = new MonthStrip(NAMES_M, MONTH_M, ROW_M, rows.size());
    for (Map.Entry<String, List<Days>> row : rows) {
      strip.row(row.getKey());
      for (Days days : row.getValue()) {
        strip.bar(
            new MonthStrip.Bar(
                row.getKey() + (days.picked() ? ", picked" : ", in bloom"),
                days.picked() ? PICKED : BLOOM,
                days.picked() ? -ASIDE_M : ASIDE_M,
                BAR_M),
            days.from(),
            days.until());
      }
    }
    return new Panel.Figure(
        title,
        strip.marks(),
        List.of(LegendEntry.area("in bloom", BLOOM), LegendEntry.area("picked", PICKED)),
        strip.widthMm(),
        0);
  }
}
