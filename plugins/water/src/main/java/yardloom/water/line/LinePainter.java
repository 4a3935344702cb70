package yardloom.water.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.water.head.Supply;

/** Draws the trenches with what lies in them, sleeves and valves; pressures stand in the tables. */
public final class LinePainter implements Painter {
  private static final String COLOUR = "#0b3c5d";
  private static final Style PIPE = Style.line("supply-line", COLOUR, 0.5);
  private static final Style SLEEVE = Style.line("line-sleeve", "#000000", 0.7).dashed("1 0.6");
  private static final Style FLOW = Style.filled("line-flow", COLOUR);
  private static final Style VALVE = Style.filled("zone-valve", COLOUR).outlined("#000000", 0.18);
  private static final int SIZE_RANK = 4;
  private static final Length ROOM_FOR_TEXT = Length.metres(1.5);

  @Override
  public Layer layer() {
    return new Layer("water.lines", "Lines for water", Layer.Band.WATER);
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Trenches.KEY, ZoneLine.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.EDGE, WorkPhase.HEAD, SheetPage.IRRIGATION);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    facts
        .find(Trenches.KEY)
        .ifPresent(
            of -> {
              List<Trenches.Trench> trenches = of.trenches();
              trenches.forEach(t -> trench(t, marks));
              sizes(trenches, marks);
              if (!trenches.isEmpty()) {
                valves(plan, trenches.get(0).way().start(), facts, marks);
              }
            });
    return marks;
  }

  private static void trench(Trenches.Trench trench, List<Mark> marks) {
    Line way = trench.way();
    marks.add(new Mark.Stroke(way, PIPE, "line: " + trench.text()));
    trench.paved().forEach(p -> marks.add(new Mark.Stroke(p, SLEEVE, "sleeve under paving")));
    if (way.length().compareTo(ROOM_FOR_TEXT) > 0) {
      marks.add(arrow(way));
    }
  }

  /** What lies in a trench is said once, at the longest of those with the same pipes. */
  private static void sizes(List<Trenches.Trench> trenches, List<Mark> marks) {
    Map<String, Line> longest = new LinkedHashMap<>();
    for (Trenches.Trench trench : trenches) {
      longest.merge(
          trench.text(), trench.way(), (a, b) -> b.length().compareTo(a.length()) > 0 ? b : a);
    }
    longest.forEach(
        (text, way) -> {
          if (way.length().compareTo(ROOM_FOR_TEXT) > 0) {
            marks.add(new Mark.Label(way.middle(), text, 2, false, SIZE_RANK, Mark.Anchor.NEAR));
          }
        });
  }

  private static Mark arrow(Line way) {
    Length half = way.length().div(2);
    Point before = way.at(half.minus(Length.millimetres(50)));
    Point at = way.middle();
    double east = at.x().minus(before.x()).metres();
    double north = at.y().minus(before.y()).metres();
    Angle turn = Angle.radians(StrictMath.atan2(east, north));
    return new Mark.Symbol(at, Mark.SymbolForm.ARROW, Length.ZERO, turn, FLOW, "flow in the pipe");
  }

  private static void valves(Plan plan, Point tap, Facts facts, List<Mark> marks) {
    int zones = facts.all(ZoneLine.KEY).size();
    String text = zones == 1 ? "head, 1 valve" : "head, " + zones + " valves";
    marks.add(new Mark.Symbol(tap, Mark.SymbolForm.SQUARE, Length.ZERO, Angle.ZERO, VALVE, text));
    // In one word: a tank often stands between house and lot line, with little room beside it.
    String said = Supply.isTank(plan) ? "head" : text;
    marks.add(new Mark.Label(tap, said, 2, false, 2, Mark.Anchor.NEAR));
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    List<LegendEntry> entries = new ArrayList<>();
    facts
        .find(Trenches.KEY)
        .filter(t -> !t.trenches().isEmpty())
        .ifPresent(
            t -> {
              entries.add(LegendEntry.line("Trench with pipe; Z1: zone 1", PIPE));
              if (t.paved().value().metres() > 0) {
                entries.add(LegendEntry.line("Sleeve under paving", SLEEVE));
              }
              entries.add(LegendEntry.symbol("Head assembly", Mark.SymbolForm.SQUARE, VALVE));
              entries.add(LegendEntry.symbol("Flow in the pipe", Mark.SymbolForm.ARROW, FLOW));
            });
    return entries;
  }
}
