package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/** Surfaces in patterns that stay apart in black and white; the legend has usual depths. */
public final class SurfacePainter implements Painter {
  /** Its layer, which the materials sheet shows. */
  public static final String LAYER = "materials.surfaces";

  private static final Map<SurfaceKind, Style> STYLES = new EnumMap<>(SurfaceKind.class);

  static {
    STYLES.put(SurfaceKind.PATH, style("mulch-path", Hatch.CHIPS));
    STYLES.put(SurfaceKind.TREE_RING, style("mulch-tree-ring", Hatch.CROSS));
    STYLES.put(SurfaceKind.PERENNIAL_BED, style("mulch-perennial", Hatch.SPARSE_DOTS));
    STYLES.put(SurfaceKind.MULCHED_GROUND, style("mulch-ground", Hatch.DOTS));
    STYLES.put(SurfaceKind.ANNUAL_BED, style("mulch-annual", Hatch.HORIZONTAL));
  }

  /** Over the beds, whose fill would hide the hatches, and under crowns. */
  @Override
  public Layer layer() {
    return new Layer(LAYER, "Mulched ground", Layer.Band.PLANTS);
  }

  /** The materials sheet shows it; the site plan would be crowded. */
  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(WorkPhase.SHEET, WorkPhase.FINISH, WorkPhase.LATER);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (MulchSurface s : shown(facts)) {
      marks.add(new Mark.Region(s.shape(), style(s.kind()), s.title() + ", " + s.kind().title()));
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    List<LegendEntry> legend = new ArrayList<>();
    DepthNotes.usual(facts.all(YardFacts.SURFACES), plan.info().units())
        .forEach(
            (kind, note) -> {
              if (!note.isEmpty()) {
                legend.add(LegendEntry.area(kind.title() + ": " + note, style(kind)));
              }
            });
    return legend;
  }

  /** Paths and ground mulched whole carry their own pattern already. */
  private static List<MulchSurface> shown(Facts facts) {
    return facts.all(YardFacts.SURFACES).stream()
        .filter(s -> s.kind() != SurfaceKind.PATH && s.kind() != SurfaceKind.MULCHED_GROUND)
        .toList();
  }

  static Style style(SurfaceKind kind) {
    return STYLES.get(kind);
  }

  private static Style style(String name, Hatch hatch) {
    return Style.filled(name, "").hatched(hatch).outlined("#5b5546", 0.18);
  }
}
