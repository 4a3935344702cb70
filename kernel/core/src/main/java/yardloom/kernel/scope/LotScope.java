package yardloom.kernel.scope;

import yardloom.kernel.plan.Draft;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;

/** The block of the lot, in which its sides are described. */
public final class LotScope extends Scope {
  private final Draft draft;

  public LotScope(Draft draft, SourceRef place) {
    super(place);
    this.draft = draft;
  }

  /** The plan being written; for implementations of words only. */
  public Draft draft() {
    return draft;
  }

  @Override
  public LotScope at(SourceRef newPlace) {
    return new LotScope(draft, newPlace);
  }
}
