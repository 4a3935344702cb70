package yardloom.site.firm;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.vocab.Scope;

/** The block in which a detail is drawn, in metres or feet of its own. */
public final class DetailScope extends Scope {
  private final List<Mark> marks;
  private final Set<DetailMaterial> materials;

  DetailScope(List<Mark> marks, Set<DetailMaterial> materials, SourceRef place) {
    super(place);
    this.marks = marks;
    this.materials = materials;
  }

  static DetailScope empty(SourceRef place) {
    return new DetailScope(new ArrayList<>(), new LinkedHashSet<>(), place);
  }

  /** What has been drawn so far, from the ground up; for implementations of words only. */
  List<Mark> marks() {
    return marks;
  }

  /** What has been drawn of so far; for implementations of words only. */
  Set<DetailMaterial> materials() {
    return materials;
  }

  @Override
  public DetailScope at(SourceRef newPlace) {
    return new DetailScope(marks, materials, newPlace);
  }
}
