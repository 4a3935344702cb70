package yardloom.planting.care;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.planting.strip.MonthStrip;

/** The year of care as a strip chart: a row for each act, a bar over its days. */
public final class CareFigure {
  private static final double NAMES_M = 52;
  private static final double MONTH_M = 11;
  private static final double BAR_M = 2.8;
  private static final double ROW_M = 4.7;

  private static final Style EACH =
      Style.filled("care-each", Palette.MUTED).outlined(Palette.INK, 0.18);
  private static final Style FIRST =
      Style.filled("care-first", Palette.PAPER).hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.18);
  private static final Style LATER =
      Style.filled("care-later", Palette.PAPER).outlined(Palette.INK, 0.25);

  private CareFigure() {}

  /** The chart; without rows where there is no calendar. */
  public static Panel.Figure of(List<CareAct> acts) {
    Map<String, List<CareAct>> rows = rows(acts);
    MonthStrip strip = new MonthStrip(NAMES_M, MONTH_M, ROW_M, rows.size());
    rows.forEach(
        (name, same) -> {
          strip.row(name);
          Style style = style(same);
          for (CareAct act : same) {
            strip.bar(
                new MonthStrip.Bar(act.task().what(), style, 0, BAR_M),
                act.when().from(),
                act.when().until());
          }
        });
    return new Panel.Figure("The year of care", strip.marks(), legend(), strip.widthMm(), 0);
  }

  /** By name, in the order of the year in which each first ends. */
  private static Map<String, List<CareAct>> rows(List<CareAct> acts) {
    Map<String, List<CareAct>> rows = new LinkedHashMap<>();
    acts.stream()
        .sorted(
            Comparator.comparing((CareAct a) -> a.when().ends())
                .thenComparing(CareAct::key)
                .thenComparing((CareAct a) -> a.when().season()))
        .forEach(a -> rows.computeIfAbsent(name(a), k -> new ArrayList<>()).add(a));
    return rows;
  }

  /** Weeding goes on all season, weekly or not: one row. */
  private static String name(CareAct act) {
    return act.task().act() == Act.WEED ? "Weed and walk the mulch" : act.task().what();
  }

  private static Style style(List<CareAct> same) {
    boolean first = same.stream().anyMatch(a -> a.when().season() == 1);
    boolean later = same.stream().anyMatch(a -> a.when().season() > 1);
    return first && later ? EACH : first ? FIRST : LATER;
  }

  private static List<LegendEntry> legend() {
    return List.of(
        LegendEntry.area("in season 1 and after", EACH),
        LegendEntry.area("in season 1 only", FIRST),
        LegendEntry.area("from season 2 or later on", LATER));
  }
}
