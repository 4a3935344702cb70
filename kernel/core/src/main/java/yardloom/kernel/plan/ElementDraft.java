package yardloom.kernel.plan;

import java.util.function.Function;
import yardloom.kernel.problem.SourceRef;

/** An element while its block is read: plugins hang attributes on it, then it is finished. */
public final class ElementDraft {
  private final ElementId id;
  private final SourceRef place;
  private final Attributes.Builder attributes = new Attributes.Builder();
  private Function<Element.Common, ? extends Element> finish;

  ElementDraft(ElementId id, SourceRef place, Function<Element.Common, ? extends Element> finish) {
    this.id = id;
    this.place = place;
    this.finish = finish;
  }

  public ElementId id() {
    return id;
  }

  public SourceRef place() {
    return place;
  }

  public Attributes.Builder attributes() {
    return attributes;
  }

  Element freeze() {
    return finish.apply(new Element.Common(id, place, attributes.build(id)));
  }
}
