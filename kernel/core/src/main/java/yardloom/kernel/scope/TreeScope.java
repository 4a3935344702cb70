package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.SourceRef;

/** The block of a tree. */
public final class TreeScope extends ElementScope {
  public TreeScope(Draft draft, ElementDraft element, SourceRef place) {
    super(draft, element, place);
  }

  @Override
  public TreeScope at(SourceRef newPlace) {
    return new TreeScope(draft(), element(), newPlace);
  }
}
