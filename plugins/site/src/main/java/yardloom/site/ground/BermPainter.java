package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** Banks of the earth of swales: their foot, and the edges of a flat top. */
public final class BermPainter implements Painter {
  private static final Style BANK =
      Style.filled("berm", "#efe6d6").outlined("#6b5330", 0.25).dashed("3 1");
  private static final Style TOP = Style.line("berm-top", "#6b5330", 0.18);

  @Override
  public Layer layer() {
    return new Layer("site.berm", "Banks of swales", Layer.Band.WORKS);
  }

  @Override
  public List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    for (Element.Structure structure : plan.all(Element.Structure.class)) {
      structure
          .attributes()
          .get(Berm.KEY)
          .ifPresent(
              berm -> {
                String about = structure.id().toString();
                marks.add(new Mark.Region(structure.shape(), BANK, about));
                if (berm.top().metres() > 0) {
                  var gap = berm.swale().top().div(2).plus(berm.height().times(berm.sides()));
                  marks.add(
                      new Mark.Region(PathStrip.leftOf(berm.line(), gap, berm.top()), TOP, about));
                }
              });
    }
    return marks;
  }

  @Override
  public List<LegendEntry> legend(Plan plan, Facts facts) {
    return paint(plan, facts).isEmpty()
        ? List.of()
        : List.of(LegendEntry.area("Bank of a swale's earth", BANK));
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
