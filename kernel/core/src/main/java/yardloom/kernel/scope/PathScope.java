package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.SourceRef;

/** The block of a path. */
public final class PathScope extends ElementScope {
  public PathScope(Draft draft, ElementDraft element, SourceRef place) {
    super(draft, element, place);
  }

  @Override
  public PathScope at(SourceRef newPlace) {
    return new PathScope(draft(), element(), newPlace);
  }
}
