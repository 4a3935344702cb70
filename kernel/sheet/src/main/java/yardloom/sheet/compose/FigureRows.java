package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.ColumnGrid;
import yardloom.sheet.paper.Ink;

/**
 * Figures of one size side by side: small multiples are compared across. The number in a row is the
 * one that lets them be drawn largest within most of a sheet.
 *
 * @param figures all of the set
 * @param across how many stand in a row
 * @param widthMm the width of each
 * @param from the first that is still to be set
 */
record FigureRows(List<FigureBlock> figures, int across, double widthMm, int from)
    implements Block {
  private static final double SHARE_OF_HEIGHT = 0.72;
  private static final double MOST_OF_LEAST_WIDTH = 2.2;

  /**
   * @param leastMm the least width of each
   * @param sheetWidthMm all that a sheet offers
   * @param sheetHeightMm all that a sheet offers
   */
  static FigureRows of(
      List<FigureBlock> figures, double leastMm, double sheetWidthMm, double sheetHeightMm) {
    FigureRows best = null;
    double largest = -1;
    for (int across = 1; across <= figures.size(); across++) {
      double room = (sheetWidthMm - (across - 1) * ColumnGrid.GUTTER_MM) / across;
      if (across > 1 && room < leastMm) {
        break;
      }
      double width = Math.min(room, MOST_OF_LEAST_WIDTH * leastMm);
      int rows = (figures.size() + across - 1) / across;
      double around = figures.stream().mapToDouble(f -> f.aroundMm(width)).max().orElse(0);
      double drawing =
          (SHARE_OF_HEIGHT * sheetHeightMm - (rows - 1) * ColumnGrid.GAP_MM) / rows - around;
      double size = figures.get(0).mmPerM(width, drawing);
      if (size >= largest) {
        largest = size;
        List<FigureBlock> sized = figures.stream().map(f -> f.drawnUpTo(drawing)).toList();
        best = new FigureRows(sized, across, width, 0);
      }
    }
    return best;
  }

  @Override
  public double minWidthMm() {
    return across * widthMm + (across - 1) * ColumnGrid.GUTTER_MM;
  }

  @Override
  public Optional<Placed> place(Box room, boolean partly) {
    double cellMm = (room.width() - (across - 1) * ColumnGrid.GUTTER_MM) / across;
    List<Ink> inks = new ArrayList<>();
    double y = room.y();
    int next = from;
    while (next < figures.size()) {
      double rowHeight = 0;
      List<Ink> row = new ArrayList<>();
      int end = Math.min(next + across, figures.size());
      double top = next == from ? y : y + ColumnGrid.GAP_MM;
      for (int i = next; i < end; i++) {
        double x = room.x() + (i - next) * (cellMm + ColumnGrid.GUTTER_MM);
        Box cell = new Box(x, top, cellMm, room.bottom() - top);
        Optional<Placed> placed = figures.get(i).place(cell, false);
        if (placed.isEmpty()) {
          return stopped(inks, y - room.y(), next, partly);
        }
        row.addAll(placed.get().inks());
        rowHeight = Math.max(rowHeight, placed.get().heightMm());
      }
      inks.addAll(row);
      y = top + rowHeight;
      next = end;
    }
    return Optional.of(new Placed(inks, y - room.y(), Optional.empty()));
  }

  private Optional<Placed> stopped(List<Ink> inks, double heightMm, int next, boolean partly) {
    if (!partly || next == from) {
      return Optional.empty();
    }
    Block rest = new FigureRows(figures, across, widthMm, next);
    return Optional.of(new Placed(inks, heightMm, Optional.of(rest)));
  }
}
