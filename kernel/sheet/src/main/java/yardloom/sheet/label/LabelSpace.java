package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/** What is already on a drawing: texts and leaders that bar a place, lines that make it dear. */
public final class LabelSpace {
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
  private final TakenPlaces taken;
  private final List<Segment> leaders = new ArrayList<>();
  private final List<Segment> lines = new ArrayList<>();
  private SegmentGrid index;

  /** An empty drawing that texts must not leave. */
  public LabelSpace(Box area) {
    this.area = area;
    this.taken = new TakenPlaces(area);
  }

  Box area() {
    return area;
  }

  /** Keeps texts off {@code quad}. */
  public void take(Quad quad) {
    taken.add(quad);
  }

  /** Keeps texts off the line. */
  void takeLeader(Xy from, Xy to) {
    leaders.add(new Segment(from, to, Kind.LINE));
  }

  /** What is taken so far, to go back to with {@link #backTo}. */
  record State(int taken, int leaders) {}

  State state() {
    return new State(taken.size(), leaders.size());
  }

  /** Forgets the texts and leaders that came after {@code state}. */
  void backTo(State state) {
    taken.cutTo(state.taken);
    leaders.subList(state.leaders, leaders.size()).clear();
  }

  public boolean isFree(Quad quad) {
    return quad.inside(area)
        && !taken.anyNear(Footprint.boundsOf(quad.corners()), quad::overlaps)
        && isOffLeaders(quad);
  }

  private boolean isOffLeaders(Quad quad) {
    for (Segment l : leaders) {
      if (quad.crossedBy(l.from, l.to)) {
        return false;
      }
    }
    return true;
  }

  /** Whether no symbol stands under it, such as the mark of a point or a tap. */
  public boolean isClearOfSymbols(Quad quad) {
    return lines.stream().noneMatch(s -> s.kind == Kind.SYMBOL && quad.crossedBy(s.from, s.to));
  }

  /**
   * Whether a leader meets no text and no other leader; a text that already covers its start cannot
   * be avoided.
   */
  boolean isLeaderFree(Xy from, Xy to) {
    Box bounds = Footprint.boundsOf(List.of(from, to));
    for (Segment l : leaders) {
      if (Quad.isCrossing(from, to, l.from, l.to)) {
        return false;
      }
    }
    return !taken.anyNear(bounds, q -> q.crossedBy(from, to) && q.distance(from) > 0);
  }

  /** A line of the drawing that labels had better not cross. */
  public void avoid(Xy from, Xy to) {
    add(from, to, Kind.LINE);
  }

  /** Part of a symbol, such as a plant, that is read worse than a line when text lies on it. */
  public void avoidSymbol(Xy from, Xy to) {
    add(from, to, Kind.SYMBOL);
  }

  private void add(Xy from, Xy to, Kind kind) {
    lines.add(new Segment(from, to, kind));
    index = null;
  }

  /** An outline of a region or a measured line; leaders had better not cross it either. */
  public void avoidOutline(Xy from, Xy to) {
    add(from, to, Kind.OUTLINE);
  }

  /**
   * What lies under a text.
   *
   * @param all lines of any kind
   * @param outlines of regions, and measured lines
   * @param symbols parts of them
   */
  record Under(long all, long outlines, long symbols) {}

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
    return new Under(outlines + symbols + count[Kind.LINE.ordinal()], outlines, symbols);
  }

  /** How many outlines run under {@code box}. */
  long outlinesUnder(Box box) {
    return under(box, new Price(0, 1, 0), Double.POSITIVE_INFINITY).outlines();
  }

  /** Whether part of a symbol lies under {@code box}. */
  boolean isOnSymbol(Box box) {
    return under(box, new Price(0, 0, 1), 0).symbols() > 0;
  }

  /** Whether nothing at all lies under {@code box}. */
  boolean isBare(Box box) {
    return under(box, new Price(1, 0, 0), 0).all() == 0;
  }

  /** A leader that crosses the outlines of things it does not belong to misleads. */
  double crossingCost(Xy from, Xy to) {
    int[] outlines = {0};
    Segment leader = new Segment(from, to, Kind.LINE);
    index()
        .near(
            leader.left(),
            leader.top(),
            leader.right(),
            leader.bottom(),
            s -> {
              if (s.kind == Kind.OUTLINE && Quad.isCrossing(from, to, s.from, s.to)) {
                outlines[0]++;
              }
              return true;
            });
    return PER_OUTLINE_CROSSED * outlines[0];
  }

  private SegmentGrid index() {
    if (index == null) {
      index = new SegmentGrid(area, lines);
    }
    return index;
  }
}
