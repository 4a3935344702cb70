package yardloom.site.built;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.built.Flight;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.plan.Element;
import yardloom.site.element.ElementPainter;

/** Drives, terraces and other hard surfaces. */
public final class PavingPainter extends ElementPainter<Element.Paving> {
  private static final Style NOSING = Style.line("step", Palette.PAVING.stroke(), 0.25);

  public PavingPainter() {
    super(Element.Paving.class, new Layer("site.paving", "Paving", Layer.Band.GROUND));
  }

  @Override
  protected List<Mark> paint(Element.Paving element) {
    String about = element.id().toString();
    List<Mark> marks = new ArrayList<>();
    marks.add(new Mark.Region(element.shape(), style(element, Palette.PAVING), about));
    element
        .attributes()
        .get(Flight.KEY)
        .ifPresent(f -> f.nosings().forEach(n -> marks.add(new Mark.Stroke(n, NOSING, about))));
    return marks;
  }

  @Override
  protected List<LegendEntry> legend(List<Element.Paving> elements) {
    return byStanding(elements, "Paving", Palette.PAVING, LegendEntry::area);
  }

  @Override
  public boolean partOfYard() {
    return true;
  }
}
