package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;

/**
 * Places that texts keep off, by the {@link DrawingCells} that they reach into: a drawing of many
 * texts asks for few of them.
 */
final class TakenPlaces {
  private static final double CELL_MM = 8;

  /** A place with the upright box about it: most are ruled out by that. */
  private record Taken(Quad quad, Box bounds) {}

  private final DrawingCells cells;
  private final List<List<Taken>> inCell = new ArrayList<>();
  private final List<Quad> all = new ArrayList<>();

  TakenPlaces(Box area) {
    cells = new DrawingCells(area, CELL_MM);
    clear();
  }

  private void clear() {
    inCell.clear();
    for (int i = 0; i < cells.count(); i++) {
      inCell.add(new ArrayList<>(0));
    }
  }

  int size() {
    return all.size();
  }

  /** Forgets all but the first {@code size}. */
  void cutTo(int size) {
    List<Quad> kept = List.copyOf(all.subList(0, size));
    all.clear();
    clear();
    kept.forEach(this::add);
  }

  void add(Quad quad) {
    all.add(quad);
    Taken taken = new Taken(quad, Footprint.boundsOf(quad.corners()));
    Box b = taken.bounds;
    cells.each(b.x(), b.y(), b.right(), b.bottom(), cell -> inCell.get(cell).add(taken));
  }

  /** Whether one of those whose upright boxes meet {@code bounds} answers yes; some asked twice. */
  boolean anyNear(Box bounds, Predicate<Quad> question) {
    return cells.any(
        bounds.x(),
        bounds.y(),
        bounds.right(),
        bounds.bottom(),
        cell -> {
          for (Taken t : inCell.get(cell)) {
            if (!bounds.isFurtherThan(0, t.bounds) && question.test(t.quad)) {
              return true;
            }
          }
          return false;
        });
  }
}
