package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant.Form;

/** Draws every plant of the beds: a circle of its mature spread, or a dot when that is small. */
public final class PlantPainter implements Painter {
  /** Plants with a smaller spread are dots. */
  static final Length SMALL = Length.feet(2);

  private static final Style DRILL = Style.line("plant-drill", "#7a5a12", 0.25);

  /** After the names of beds and paths, which matter more. */
  private static final int LABEL_RANK = 4;

  /** What another bed says too is in the table; no leader is worth it. */
  private static final int REPEATED_RANK = 5;

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
    Map<ElementId, String> labels = new TreeMap<>();
    Map<ElementId, Shape> beds = new TreeMap<>();
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      if (p.plant().start().isInDrills()) {
        drills(p, marks);
      } else {
        p.at().forEach(at -> marks.add(symbol(p, at)));
      }
      if (!p.at().isEmpty()) {
        labels.merge(p.bed().id(), label(p), (x, y) -> x + ", " + y);
        beds.put(p.bed().id(), p.bed().shape());
      }
    }
    Set<String> said = new HashSet<>();
    labels.forEach(
        (id, text) -> {
          int rank = said.add(text) ? LABEL_RANK : REPEATED_RANK;
          marks.add(
              new Mark.Label(beds.get(id).heart(), text, 2, false, rank, Mark.Anchor.NEAR)
                  .on(beds.get(id)));
        });
    return marks;
  }

  private static Mark symbol(Planting p, Point at) {
    Length spread = p.plant().spread().middle();
    return new Mark.Symbol(
        at,
        isSmall(spread) ? SymbolForm.DOT : SymbolForm.DISC,
        spread,
        Angle.ZERO,
        style(p),
        p.plant().name());
  }

  /** What is sown in drills stands too close for a mark of each plant. */
  private static void drills(Planting p, List<Mark> marks) {
    for (List<Point> drill : p.drills()) {
      if (drill.size() == 1) {
        marks.add(symbol(p, drill.get(0)));
      } else {
        Line line = Line.between(drill.get(0), drill.get(drill.size() - 1));
        marks.add(new Mark.Stroke(line, DRILL, p.plant().name()));
      }
    }
  }

  private static String label(Planting p) {
    int drills = p.drills().size();
    return p.plant().start().isInDrills()
        ? drills + (drills == 1 ? " row of " : " rows of ") + p.plant().name()
        : p.at().size() + " " + p.plant().name() + (p.choice().stands() ? " (existing)" : "");
  }

  private static Style style(Planting p) {
    Style ofNew = style(p.plant().form());
    return p.choice().stands() ? ofNew.existing() : ofNew;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    Set<Form> small = EnumSet.noneOf(Form.class);
    Set<Form> large = EnumSet.noneOf(Form.class);
    boolean inDrills = false;
    for (Planting p : facts.get(PlantPlaces.KEY).plantings()) {
      if (!p.at().isEmpty() && p.plant().start().isInDrills()) {
        inDrills = true;
      } else if (!p.at().isEmpty()) {
        (isSmall(p.plant().spread().middle()) ? small : large).add(p.plant().form());
      }
    }
    List<LegendEntry> entries = new ArrayList<>();
    large.forEach(
        f -> entries.add(entry(words(f) + " at mature spread", SymbolForm.DISC, style(f))));
    small.forEach(f -> entries.add(entry("Small " + lower(words(f)), SymbolForm.DOT, style(f))));
    if (inDrills) {
      entries.add(LegendEntry.line("Row to sow", DRILL));
    }
    return entries;
  }

  private static LegendEntry entry(String text, SymbolForm form, Style style) {
    return new LegendEntry(text, style, Optional.of(form), false);
  }

  private static boolean isSmall(Length spread) {
    return spread.compareTo(SMALL) < 0;
  }

  private static String lower(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  private static String words(Form form) {
    return switch (form) {
      case HERB -> "Perennial";
      case ANNUAL -> "Annual";
      case SHRUB -> "Shrub";
      case VINE -> "Vine";
      case TREE -> "Tree";
    };
  }

  private static Style style(Form form) {
    return switch (form) {
      case HERB -> Style.filled("plant-perennial", "#a9cf8f").outlined("#2f5d1e", 0.18);
      case ANNUAL -> Style.filled("plant-annual", "#f2d48a").outlined("#7a5a12", 0.18);
      case SHRUB -> Style.filled("plant-shrub", "#7fb069").outlined("#23491a", 0.25);
      case VINE -> Style.filled("plant-vine", "#b9b6d8").outlined("#4a4580", 0.18);
      case TREE -> Style.filled("plant-tree", "#8cc084").outlined("#23491a", 0.25);
    };
  }
}
