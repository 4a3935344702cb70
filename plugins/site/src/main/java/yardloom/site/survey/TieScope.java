package yardloom.site.survey;

import java.util.List;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.survey.TapeFix;
import yardloom.kernel.vocab.Scope;

/** The block of a tied point, in which its tapes are given. */
public final class TieScope extends Scope {
  private final List<TapeFix.Tape> tapes;

  public TieScope(List<TapeFix.Tape> tapes, SourceRef place) {
    super(place);
    this.tapes = tapes;
  }

  /** The tapes read so far; for implementations of words only. */
  public List<TapeFix.Tape> tapes() {
    return tapes;
  }

  @Override
  public TieScope at(SourceRef newPlace) {
    return new TieScope(tapes, newPlace);
  }
}
