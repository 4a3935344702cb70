package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;

/** The block of an element. */
public abstract class ElementScope extends Scope {
  private final Draft draft;
  private final ElementDraft element;

  protected ElementScope(Draft draft, ElementDraft element, SourceRef place) {
    super(place);
    this.draft = draft;
    this.element = element;
  }

  /** The plan being written; for implementations of words only. */
  public final Draft draft() {
    return draft;
  }

  /** The element being written; for implementations of words only. */
  public final ElementDraft element() {
    return element;
  }
}
