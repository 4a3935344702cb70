package yardloom.site.picture;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/** One layer of the picture of the yard; no sheet that is built from shows it. */
public record PicturePainter(
    Layer layer, Function<Plan, List<Mark>> marks, Function<Plan, List<LegendEntry>> entries)
    implements Painter {

  /** Ground, works and crowns, each under the band of what plugins draw between them. */
  public static List<Painter> all() {
    return List.of(
        new PicturePainter(
            new Layer("site.picture-ground", "Picture: ground", Layer.Band.GROUND),
            GroundPicture::marks,
            GroundPicture::legend),
        new PicturePainter(
            new Layer("site.picture-works", "Picture: beds and buildings", Layer.Band.WORKS),
            WorksPicture::marks,
            WorksPicture::legend),
        // After the plants of beds by its name: crowns stand over them.
        new PicturePainter(
            new Layer("site.picture-crowns", "Picture: trees", Layer.Band.PLANTS),
            CrownPicture::marks,
            CrownPicture::legend));
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(SheetPage.COVER);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    return marks.apply(plan);
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return entries.apply(plan);
  }
}
