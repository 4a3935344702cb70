package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.SourceRef;

/** The block of a bed. */
public final class BedScope extends ElementScope {
  public BedScope(Draft draft, ElementDraft element, SourceRef place) {
    super(draft, element, place);
  }

  @Override
  public BedScope at(SourceRef newPlace) {
    return new BedScope(draft(), element(), newPlace);
  }
}
