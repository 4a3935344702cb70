package yardloom.sheet.paper;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;

/**
 * The long break line of technical drawing, a thin line with a zigzag: says that a thing runs on
 * beyond the edge of the drawing.
 *
 * <p>References: [1] ISO 128-2:2020, Technical product documentation, line conventions: thin
 * continuous line with zigzags for the limit of partial views (from memory).
 */
public final class BreakLine {
  private static final Style THIN = Style.line("break-line", Palette.INK, 0.18);
  private static final double ZIGZAG_MM = 3;
  private static final double BEYOND_MM = 1.5;

  private BreakLine() {}

  /** The break lines where a closed ring leaves {@code area}. */
  public static List<Ink> where(List<Xy> ring, Box area) {
    List<Ink> lines = new ArrayList<>();
    addAlong(lines, ring, area.x(), false, area.y(), area.bottom());
    addAlong(lines, ring, area.right(), false, area.y(), area.bottom());
    addAlong(lines, ring, area.y(), true, area.x(), area.right());
    addAlong(lines, ring, area.bottom(), true, area.x(), area.right());
    return lines;
  }

  private static void addAlong(
      List<Ink> lines, List<Xy> ring, double at, boolean level, double least, double most) {
    List<Double> cuts = cuts(ring, at, level);
    for (int i = 0; i + 1 < cuts.size(); i += 2) {
      double from = Math.max(least, cuts.get(i) - BEYOND_MM);
      double to = Math.min(most, cuts.get(i + 1) + BEYOND_MM);
      if (from < to) {
        lines.add(new Ink.Path(List.of(zigzag(from, to, at, level)), THIN));
      }
    }
  }

  /** Where the ring crosses the level line (or upright, if not {@code level}) at {@code at}. */
  private static List<Double> cuts(List<Xy> ring, double at, boolean level) {
    List<Double> cuts = new ArrayList<>();
    for (int i = 0; i < ring.size(); i++) {
      Xy a = ring.get(i);
      Xy b = ring.get((i + 1) % ring.size());
      double from = level ? a.y() : a.x();
      double to = level ? b.y() : b.x();
      if ((from > at) != (to > at)) {
        double share = (at - from) / (to - from);
        cuts.add(level ? a.x() + share * (b.x() - a.x()) : a.y() + share * (b.y() - a.y()));
      }
    }
    return cuts.stream().sorted().toList();
  }

  private static Ink.Track zigzag(double from, double to, double at, boolean level) {
    double middle = (from + to) / 2;
    double half = Math.min(ZIGZAG_MM, to - from) / 4;
    double[] along = {from, middle - 2 * half, middle - half, middle + half, middle + 2 * half, to};
    double[] off = {0, 0, -2 * half, 2 * half, 0, 0};
    List<Xy> points = new ArrayList<>();
    for (int i = 0; i < along.length; i++) {
      points.add(level ? new Xy(along[i], at + off[i]) : new Xy(at + off[i], along[i]));
    }
    return new Ink.Track(points, false);
  }
}
