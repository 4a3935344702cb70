package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;

/** The outermost block: the plan itself. */
public final class PlanScope extends Scope {
  private final Draft draft;

  public PlanScope(Draft draft, SourceRef place) {
    super(place);
    this.draft = draft;
  }

  /** The plan being written; for implementations of words only. */
  public Draft draft() {
    return draft;
  }

  @Override
  public PlanScope at(SourceRef newPlace) {
    return new PlanScope(draft, newPlace);
  }
}
