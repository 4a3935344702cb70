package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import yardloom.facts.work.SheetPage;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.SymbolForm;
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

/** Draws every plant of the beds by form and leaf habit, at its mature spread. */
public final class PlantPainter implements Painter {
  private static final Style DRILL = Style.line("plant-drill", "#7a5a12", 0.25);

  private static final Style GOING =
      Style.filled("plant-going", "#ffffff").outlined("#1d2722", 0.25);

  @Override
  public Layer layer() {
    return new Layer("planting.plants", "Plants", Layer.Band.PLANTS);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.PLANT, SheetPage.PLANTING);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (Planting p : facts.get(PlantPlaces.KEY).drawn()) {
      if (p.plant().growth().start().isInDrills()) {
        drills(p, marks);
      } else {
        Set<Point> stay =
            Thinning.of(p).map(t -> Set.copyOf(Thinning.kept(p, t))).orElseGet(Set::of);
        for (Point at : p.at()) {
          boolean goes = !stay.isEmpty() && !stay.contains(at);
          marks.addAll(goes ? List.of(going(p, at)) : symbol(p, at));
        }
      }
    }
    return marks;
  }

  /** What is thinned out later never reaches its spread. */
  private static Mark going(Planting p, Point at) {
    return new Mark.Symbol(
        at, SymbolForm.DOT, Length.ZERO, Angle.ZERO, GOING, p.plant().name() + ", thinned out");
  }

  private static List<Mark> symbol(Planting p, Point at) {
    return PlantSymbol.of(p.plant())
        .at(at, p.plant().size().spread().middle(), p.choice().stands(), p.plant().name());
  }

  /** What is sown in drills stands too close for a mark of each plant. */
  private static void drills(Planting p, List<Mark> marks) {
    for (List<Point> drill : p.drills()) {
      if (drill.size() == 1) {
        marks.addAll(symbol(p, drill.get(0)));
      } else {
        Line line = Line.between(drill.get(0), drill.get(drill.size() - 1));
        marks.add(new Mark.Stroke(line, DRILL, p.plant().name()));
      }
    }
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    Set<PlantSymbol> symbols = new TreeSet<>();
    boolean inDrills = false;
    for (Planting p : facts.get(PlantPlaces.KEY).drawn()) {
      if (!p.at().isEmpty() && p.plant().growth().start().isInDrills()) {
        inDrills = true;
      } else if (!p.at().isEmpty()) {
        symbols.add(PlantSymbol.of(p.plant()));
      }
    }
    List<LegendEntry> entries = new ArrayList<>();
    symbols.forEach(s -> entries.add(s.legend()));
    boolean thinned =
        facts.get(PlantPlaces.KEY).drawn().stream().anyMatch(p -> Thinning.of(p).isPresent());
    if (thinned) {
      entries.add(LegendEntry.symbol("Thinned out later", SymbolForm.DOT, GOING));
    }
    if (inDrills) {
      entries.add(LegendEntry.line("Row to sow", DRILL));
    }
    return entries;
  }
}
