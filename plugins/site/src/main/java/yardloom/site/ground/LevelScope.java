package yardloom.site.ground;

import java.util.List;
import yardloom.kernel.ground.Spot;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;

/** The block in which ground levels are given. */
public final class LevelScope extends Scope {
  private final List<Spot> spots;
  private final List<List<Spot>> breaklines;

  public LevelScope(List<Spot> spots, List<List<Spot>> breaklines, SourceRef place) {
    super(place);
    this.spots = spots;
    this.breaklines = breaklines;
  }

  /** The levels read so far; for implementations of words only. */
  public List<Spot> spots() {
    return spots;
  }

  /** The breaklines read so far; for implementations of words only. */
  public List<List<Spot>> breaklines() {
    return breaklines;
  }

  @Override
  public LevelScope at(SourceRef newPlace) {
    return new LevelScope(spots, breaklines, newPlace);
  }
}
