package yardloom.sun.yard;

import java.util.Optional;
import java.util.Set;
import yardloom.kernel.plan.ElementId;
import yardloom.sun.hours.CellGrid;
import yardloom.sun.hours.SunEngine;

/**
 * Tells which cells of a grid see the sun as they did before an edit: those that nothing which
 * came, went or changed shades, before or after, at any time of the year.
 *
 * @param changed what casts other shade than before, or did and is gone
 */
record KeptCells(YardSun before, YardSun now, Set<ElementId> changed) {
  /** None are kept where other cells are looked at, or more than what casts shade has changed. */
  static Optional<KeptCells> of(YardSun before, YardSun now, CellGrid was, CellGrid is) {
    return was.equals(is)
        ? now.changedSince(before).map(changed -> new KeptCells(before, now, changed))
        : Optional.empty();
  }

  /** One that tells; for one thread. */
  Feeler feeler() {
    return new Feeler(
        changed.isEmpty() ? null : before.looker(), changed.isEmpty() ? null : now.looker());
  }

  /** Stands in cell after cell. */
  final class Feeler {
    private final SunEngine.Looker then;
    private final SunEngine.Looker later;

    private Feeler(SunEngine.Looker then, SunEngine.Looker later) {
      this.then = then;
      this.later = later;
    }

    /** Whether a place may see the sun otherwise than before. */
    boolean feels(double x, double y, double aboveM) {
      if (changed.isEmpty()) {
        return false;
      }
      then.turn(x, y, aboveM);
      later.turn(x, y, aboveM);
      return changed.stream()
          .anyMatch(
              id -> then.feels(before.scene().shadeOf(id)) || later.feels(now.scene().shadeOf(id)));
    }
  }
}
