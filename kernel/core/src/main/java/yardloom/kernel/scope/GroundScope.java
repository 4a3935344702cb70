package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.SourceRef;

/** The block of mulched ground. */
public final class GroundScope extends ElementScope {
  public GroundScope(Draft draft, ElementDraft element, SourceRef place) {
    super(draft, element, place);
  }

  @Override
  public GroundScope at(SourceRef newPlace) {
    return new GroundScope(draft(), element(), newPlace);
  }
}
