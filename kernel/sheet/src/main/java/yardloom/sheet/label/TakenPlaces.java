package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;

/**
 * Places that texts keep off, by the square cells that they reach into: a drawing of many texts
 * asks for few of them. What lies outside the drawing is kept in the cells along its edge.
 */
final class TakenPlaces {
  private static final double CELL_MM = 8;

  /** A place with the upright box about it: most are ruled out by that. */
  private record Taken(Quad quad, Box bounds) {}

  private final Box area;
  private final int columns;
  private final int rows;
  private final List<List<Taken>> cells = new ArrayList<>();
  private final List<Quad> all = new ArrayList<>();

  TakenPlaces(Box area) {
    this.area = area;
    columns = 1 + (int) (area.width() / CELL_MM);
    rows = 1 + (int) (area.height() / CELL_MM);
    clear();
  }

  private void clear() {
    cells.clear();
    for (int i = 0; i < columns * rows; i++) {
      cells.add(new ArrayList<>(0));
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
    for (int r = row(taken.bounds.y()); r <= row(taken.bounds.bottom()); r++) {
      for (int c = column(taken.bounds.x()); c <= column(taken.bounds.right()); c++) {
        cells.get(r * columns + c).add(taken);
      }
    }
  }

  /** Whether one of those whose upright boxes meet {@code bounds} answers yes; some asked twice. */
  boolean anyNear(Box bounds, Predicate<Quad> question) {
    int lastRow = row(bounds.bottom());
    int lastColumn = column(bounds.right());
    for (int r = row(bounds.y()); r <= lastRow; r++) {
      for (int c = column(bounds.x()); c <= lastColumn; c++) {
        for (Taken t : cells.get(r * columns + c)) {
          if (!bounds.isFurtherThan(0, t.bounds) && question.test(t.quad)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private int column(double x) {
    return Math.min(columns - 1, Math.max(0, (int) ((x - area.x()) / CELL_MM)));
  }

  private int row(double y) {
    return Math.min(rows - 1, Math.max(0, (int) ((y - area.y()) / CELL_MM)));
  }
}
