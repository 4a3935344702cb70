package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.ColumnGrid;
import yardloom.sheet.paper.Ink;

/** One sheet while it is filled: columns that blocks go down. */
final class Page {
  /** A part of a block needs so much room, or it is hardly seen. */
  private static final double LEAST_PART_MM = 16;

  private final ColumnGrid grid;
  private final double[] top;
  private final double[] bottom;
  private final List<Ink> inks = new ArrayList<>();
  private double setMm2;

  /** An empty page; unless the grid lies above the title, its last column ends above it. */
  Page(ColumnGrid grid, double titleHeightMm) {
    this.grid = grid;
    top = new double[grid.columns()];
    bottom = new double[grid.columns()];
    Arrays.fill(top, grid.content().y());
    Arrays.fill(bottom, grid.content().bottom());
    if (!grid.isAboveStrip()) {
      bottom[grid.columns() - 1] = grid.frame().bottom() - titleHeightMm - ColumnGrid.GAP_MM;
    }
  }

  ColumnGrid grid() {
    return grid;
  }

  List<Ink> inks() {
    return inks;
  }

  /** The paper that blocks have taken so far. */
  double setMm2() {
    return setMm2;
  }

  /** Keeps blocks out of the columns before {@code count} above {@code y}. */
  void reserve(int count, double y) {
    for (int i = 0; i < count; i++) {
      top[i] = Math.max(top[i], y);
    }
  }

  /** The largest height that a block of the given width finds here. */
  double room(double widthMm) {
    int span = grid.columnsFor(widthMm);
    double most = 0;
    for (int i = 0; i + span <= grid.columns(); i++) {
      most = Math.max(most, at(i, span).height());
    }
    return most;
  }

  /** Sets the whole block in the highest place, the leftmost of equals; false if none is free. */
  boolean place(Block block) {
    int span = grid.columnsFor(block.minWidthMm());
    int best = -1;
    Block.Placed set = null;
    for (int i = 0; i + span <= grid.columns(); i++) {
      Box room = at(i, span);
      boolean higher = best < 0 || room.y() < at(best, span).y() - 1e-9;
      if (higher && room.height() > 0) {
        Optional<Block.Placed> placed = block.place(room, false);
        if (placed.isPresent()) {
          best = i;
          set = placed.get();
        }
      }
    }
    if (best < 0) {
      return false;
    }
    put(best, span, set);
    return true;
  }

  /** Sets as much of the block as the tallest place holds; empty if nothing could be set. */
  Optional<Block.Placed> placePart(Block block) {
    int span = grid.columnsFor(block.minWidthMm());
    int best = 0;
    for (int i = 1; i + span <= grid.columns(); i++) {
      if (at(i, span).height() > at(best, span).height() + 1e-9) {
        best = i;
      }
    }
    Optional<Block.Placed> placed = block.place(at(best, span), true);
    int column = best;
    placed.ifPresent(p -> put(column, span, p));
    return placed;
  }

  /**
   * Sets blocks one after the other down the columns, as they are read; one that does not fit goes
   * on in the next column. A floating one waits for the next page and lets others before it.
   *
   * @return what is left for a further page
   */
  List<Block> flow(List<Block> blocks) {
    int column = 0;
    List<Block> waiting = new ArrayList<>(blocks);
    List<Block> floating = new ArrayList<>();
    while (!waiting.isEmpty() && column < grid.columns()) {
      Block block = waiting.get(0);
      int span = grid.columnsFor(block.minWidthMm());
      int at = Math.min(column, grid.columns() - span);
      Box room = at(at, span);
      Optional<Block.Placed> placed =
          room.height() <= 0 ? Optional.empty() : block.place(room, false);
      if (placed.isEmpty() && block.floats()) {
        floating.add(waiting.remove(0));
        continue;
      }
      if (placed.isEmpty() && room.height() >= LEAST_PART_MM) {
        placed = block.place(room, true);
      }
      if (placed.isEmpty()) {
        column++;
        continue;
      }
      put(at, span, placed.get());
      waiting.remove(0);
      placed.get().rest().ifPresent(rest -> waiting.add(0, rest));
    }
    floating.addAll(waiting);
    return floating;
  }

  private void put(int column, int span, Block.Placed placed) {
    inks.addAll(placed.inks());
    setMm2 += grid.span(span) * placed.heightMm();
    double end = at(column, span).y() + placed.heightMm() + ColumnGrid.GAP_MM;
    for (int i = column; i < column + span; i++) {
      top[i] = end;
    }
  }

  private Box at(int column, int span) {
    double y = grid.content().y();
    double end = grid.content().bottom();
    for (int i = column; i < column + span; i++) {
      y = Math.max(y, top[i]);
      end = Math.min(end, bottom[i]);
    }
    return new Box(grid.left(column), y, grid.span(span), Math.max(0, end - y));
  }
}
