package yardloom.site.element;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.Style;
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

  /** The style of what is new, or the same as of what is there already. */
  protected static Style style(Element element, Style ofNew) {
    return element.stands() ? ofNew.existing() : ofNew;
  }

  /**
   * One entry for what is new and one for what is there already, each if there is any.
   *
   * @param entry from the words and the style of the one or the other
   */
  protected static List<LegendEntry> byStanding(
      List<? extends Element> elements,
      String words,
      Style ofNew,
      BiFunction<String, Style, LegendEntry> entry) {
    List<LegendEntry> entries = new ArrayList<>();
    if (elements.stream().anyMatch(e -> !e.stands())) {
      entries.add(entry.apply(words + ", new", ofNew));
    }
    if (elements.stream().anyMatch(Element::stands)) {
      entries.add(entry.apply(words + ", existing", ofNew.existing()));
    }
    return entries;
  }

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
