package yardloom.site.survey;

import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.survey.DeedReader;
import yardloom.kernel.vocab.Scope;

/** The block of a deed, in which its calls are given. */
public final class DeedScope extends Scope {
  private final DeedReader reader;

  public DeedScope(DeedReader reader, SourceRef place) {
    super(place);
    this.reader = reader;
  }

  /** Takes the calls; for implementations of words only. */
  public DeedReader reader() {
    return reader;
  }

  @Override
  public DeedScope at(SourceRef newPlace) {
    return new DeedScope(reader, newPlace);
  }
}
