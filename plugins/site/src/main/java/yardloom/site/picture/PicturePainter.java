package yardloom.site.picture;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import yardloom.facts.work.SheetPage;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.SheetUse;

/**
 * One layer of the picture of the yard, grown or as it stands; no sheet that is built from shows
 * it.
 */
public record PicturePainter(
    Layer layer,
    SheetPage page,
    Function<Plan, List<Mark>> marks,
    Function<Plan, List<LegendEntry>> entries)
    implements Painter {

  /** Ground, works and crowns, each under the band of what plugins draw between them. */
  public static List<Painter> all() {
    return List.of(
        new PicturePainter(
            new Layer("site.picture-ground", "Picture: ground", Layer.Band.GROUND),
            SheetPage.COVER,
            plan -> GroundPicture.marks(plan, e -> true),
            GroundPicture::legend),
        new PicturePainter(
            new Layer("site.picture-works", "Picture: beds and buildings", Layer.Band.WORKS),
            SheetPage.COVER,
            plan -> WorksPicture.marks(plan, e -> true),
            WorksPicture::legend),
        // After the plants of beds by its name: crowns stand over them.
        new PicturePainter(
            new Layer("site.picture-crowns", "Picture: trees", Layer.Band.PLANTS),
            SheetPage.COVER,
            plan -> CrownPicture.marks(plan, e -> true),
            CrownPicture::legend),
        // What stands is drawn in the grown picture too, and explained there.
        before("ground", Layer.Band.GROUND, plan -> GroundPicture.marks(plan, Element::stands)),
        before("works", Layer.Band.WORKS, plan -> WorksPicture.marks(plan, Element::stands)),
        before("crowns", Layer.Band.PLANTS, plan -> CrownPicture.marks(plan, Element::stands)));
  }

  private static Painter before(String what, Layer.Band band, Function<Plan, List<Mark>> marks) {
    return new PicturePainter(
        new Layer("site.before-" + what, "Picture of before: " + what, band),
        SheetPage.BEFORE,
        marks,
        plan -> List.of());
  }

  /** The elements of a kind that a picture shows. */
  static <E extends Element> List<E> shown(Plan plan, Class<E> kind, Predicate<Element> shown) {
    return plan.all(kind).stream().filter(shown).toList();
  }

  @Override
  public boolean shownByDefault() {
    return false;
  }

  @Override
  public Set<SheetUse> uses() {
    return Set.of(page);
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
