package yardloom.materials;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.materials.model.Surface;
import yardloom.materials.model.SurfaceKind;

/** Surfaces in patterns that stay apart in black and white. */
final class SurfacePainter implements Painter {
  private static final Map<SurfaceKind, Style> STYLES = new EnumMap<>(SurfaceKind.class);

  static {
    STYLES.put(SurfaceKind.PATH, style("mulch-path", "#ece3d2", Hatch.CHIPS));
    STYLES.put(SurfaceKind.TREE_RING, style("mulch-tree-ring", "#e3d9c4", Hatch.CROSS));
    STYLES.put(SurfaceKind.PERENNIAL_BED, style("mulch-perennial", "#e6ecd9", Hatch.SPARSE_DOTS));
    STYLES.put(SurfaceKind.ANNUAL_BED, style("mulch-annual", "#efe9d4", Hatch.HORIZONTAL));
  }

  @Override
  public Layer layer() {
    return new Layer("materials.surfaces", "Mulched ground", Layer.Band.GROUND);
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(MaterialFacts.SURFACES);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (Surface s : facts.all(MaterialFacts.SURFACES)) {
      marks.add(new Mark.Region(s.shape(), style(s.kind()), s.title() + ", " + s.kind().title()));
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    Set<SurfaceKind> shown = new TreeSet<>();
    facts.all(MaterialFacts.SURFACES).forEach(s -> shown.add(s.kind()));
    return shown.stream().map(k -> LegendEntry.area(k.title(), style(k))).toList();
  }

  static Style style(SurfaceKind kind) {
    return STYLES.get(kind);
  }

  private static Style style(String name, String fill, Hatch hatch) {
    return Style.filled(name, fill).hatched(hatch).outlined("#5b5546", 0.18);
  }
}
