package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.problem.SourceRef;

/** The block of a building. */
public final class BuildingScope extends ElementScope {
  public BuildingScope(Draft draft, ElementDraft element, SourceRef place) {
    super(draft, element, place);
  }

  @Override
  public BuildingScope at(SourceRef newPlace) {
    return new BuildingScope(draft(), element(), newPlace);
  }
}
