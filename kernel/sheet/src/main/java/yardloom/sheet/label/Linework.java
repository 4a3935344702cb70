package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/** The lines of a drawing: they make a place for a text dear, but do not bar it. */
final class Linework {
  private static final double PER_OUTLINE_CROSSED = 3;

  private static final int KINDS = Kind.values().length;

  /** Costs that differ by less are not told apart for certain. */
  private static final double DUST = 1e-6;

  /** What a line is part of. */
  enum Kind {
    LINE,
    OUTLINE,
    SYMBOL
  }

  /** A line of the drawing. */
  record Segment(Xy from, Xy to, Kind kind) {
    double left() {
      return Math.min(from.x(), to.x());
    }

    double right() {
      return Math.max(from.x(), to.x());
    }

    double top() {
      return Math.min(from.y(), to.y());
    }

    double bottom() {
      return Math.max(from.y(), to.y());
    }
  }

  private final Box area;
  private final List<Segment> lines = new ArrayList<>();
  private SegmentGrid index;
  private SegmentGrid outlines;

  Linework(Box area) {
    this.area = area;
  }

  void add(Xy from, Xy to, Kind kind) {
    lines.add(new Segment(from, to, kind));
    index = null;
    outlines = null;
  }

  /** Whether no symbol stands under it, such as the mark of a point or a tap. */
  boolean isClearOfSymbols(Quad quad) {
    return lines.stream().noneMatch(s -> s.kind == Kind.SYMBOL && quad.crossedBy(s.from, s.to));
  }

  /**
   * What lies under a text.
   *
   * @param all lines of any kind
   * @param outlines of regions, and measured lines
   * @param symbols parts of them
   * @param cost what all of them cost
   */
  record Under(long all, long outlines, long symbols, double cost) {
    /** Whether all were counted, where none had to be that cost more. */
    boolean isWhole(double most) {
      return cost <= most + DUST;
    }
  }

  /**
   * What the lines under a text cost.
   *
   * @param each line of any kind
   * @param outline what one of these costs besides
   * @param symbol what a line of one costs besides
   */
  record Price(double each, double outline, double symbol) {
    private double of(Kind kind) {
      return switch (kind) {
        case LINE -> each;
        case OUTLINE -> each + outline;
        case SYMBOL -> each + symbol;
      };
    }
  }

  /**
   * How many lines of each kind run under {@code box}; where they cost clearly more than {@code
   * most}, not all of them are counted, but so many that those do too.
   */
  Under under(Box box, Price price, double most) {
    int[] count = new int[KINDS];
    double[] cost = {0};
    index()
        .near(
            box.x(),
            box.y(),
            box.right(),
            box.bottom(),
            s -> {
              if (box.isCrossedBy(s.from, s.to)) {
                count[s.kind.ordinal()]++;
                cost[0] += price.of(s.kind);
              }
              return cost[0] <= most + DUST;
            });
    long outlines = count[Kind.OUTLINE.ordinal()];
    long symbols = count[Kind.SYMBOL.ordinal()];
    return new Under(outlines + symbols + count[Kind.LINE.ordinal()], outlines, symbols, cost[0]);
  }

  /** How many outlines run under {@code box}. */
  long outlinesUnder(Box box) {
    return under(box, new Price(0, 1, 0), Double.POSITIVE_INFINITY).outlines();
  }

  /** Whether part of a symbol lies under {@code box}. */
  boolean isOnSymbol(Box box) {
    return under(box, new Price(0, 0, 1), 0).symbols() > 0;
  }

  /** Whether no outline and no part of a symbol lies under {@code box}. */
  boolean isClear(Box box) {
    Under under = under(box, new Price(0, 1, 1), 0);
    return under.outlines() + under.symbols() == 0;
  }

  /** Whether nothing at all lies under {@code box}. */
  boolean isBare(Box box) {
    return under(box, new Price(1, 0, 0), 0).all() == 0;
  }

  /** A leader that crosses the outlines of things it does not belong to misleads. */
  double crossingCost(Xy from, Xy to) {
    int[] crossed = {0};
    outlines()
        .along(
            from,
            to,
            s -> {
              if (Quad.isCrossing(from, to, s.from, s.to)) {
                crossed[0]++;
              }
              return true;
            });
    return PER_OUTLINE_CROSSED * crossed[0];
  }

  private SegmentGrid outlines() {
    if (outlines == null) {
      outlines = new SegmentGrid(area, lines.stream().filter(s -> s.kind == Kind.OUTLINE).toList());
    }
    return outlines;
  }

  private SegmentGrid index() {
    if (index == null) {
      index = new SegmentGrid(area, lines);
    }
    return index;
  }
}
