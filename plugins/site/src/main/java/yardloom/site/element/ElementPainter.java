package yardloom.site.element;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;

/** Draws each element of one kind on its own; the legend speaks when there is at least one. */
public abstract class ElementPainter<E extends Element> implements Painter {
  private final Class<E> kind;
  private final Layer layer;

  protected ElementPainter(Class<E> kind, Layer layer) {
    this.kind = kind;
    this.layer = layer;
  }

  protected abstract List<Mark> paint(E element);

  protected abstract List<LegendEntry> legend(List<E> elements);

  @Override
  public final Layer layer() {
    return layer;
  }

  @Override
  public final List<Mark> paint(Plan plan, Facts facts) {
    List<Mark> marks = new ArrayList<>();
    plan.all(kind).forEach(e -> marks.addAll(paint(e)));
    return marks;
  }

  @Override
  public final List<LegendEntry> legend(Plan plan, Facts facts) {
    List<E> elements = plan.all(kind);
    return elements.isEmpty() ? List.of() : legend(elements);
  }
}
