package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.List;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/** What is already on a drawing: texts and leaders that bar a place, lines that make it dear. */
public final class LabelSpace {
  private final Box area;
  private final TakenPlaces taken;
  private final List<Linework.Segment> leaders = new ArrayList<>();
  private final List<Linework.Segment> barred = new ArrayList<>();
  private final Linework linework;

  /** An empty drawing that texts must not leave. */
  public LabelSpace(Box area) {
    this.area = area;
    this.taken = new TakenPlaces(area);
    this.linework = new Linework(area);
  }

  Box area() {
    return area;
  }

  Linework linework() {
    return linework;
  }

  /** Keeps texts off {@code quad}. */
  public void take(Quad quad) {
    taken.add(quad);
  }

  /** Keeps texts off the line. */
  void takeLeader(Xy from, Xy to) {
    leaders.add(new Linework.Segment(from, to, Linework.Kind.LINE));
  }

  /** Keeps texts off a line that leaders may cross, such as a measured one. */
  public void bar(Xy from, Xy to) {
    barred.add(new Linework.Segment(from, to, Linework.Kind.LINE));
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
        && isOff(leaders, quad)
        && isOff(barred, quad);
  }

  private static boolean isOff(List<Linework.Segment> lines, Quad quad) {
    for (Linework.Segment l : lines) {
      if (quad.crossedBy(l.from(), l.to())) {
        return false;
      }
    }
    return true;
  }

  /** Whether no symbol stands under it, such as the mark of a point or a tap. */
  public boolean isClearOfSymbols(Quad quad) {
    return linework.isClearOfSymbols(quad);
  }

  /**
   * Whether a leader meets no text and no other leader; a text that already covers its start cannot
   * be avoided.
   */
  boolean isLeaderFree(Xy from, Xy to) {
    Box bounds = Footprint.boundsOf(List.of(from, to));
    for (Linework.Segment l : leaders) {
      if (Quad.isCrossing(from, to, l.from(), l.to())) {
        return false;
      }
    }
    return !taken.anyNear(bounds, q -> q.crossedBy(from, to) && q.distance(from) > 0);
  }

  /** A line of the drawing that labels had better not cross. */
  public void avoid(Xy from, Xy to) {
    linework.add(from, to, Linework.Kind.LINE);
  }

  /** Part of a symbol, such as a plant, that is read worse than a line when text lies on it. */
  public void avoidSymbol(Xy from, Xy to) {
    linework.add(from, to, Linework.Kind.SYMBOL);
  }

  /** A cross over a symbol that reaches so far from its middle. */
  public void avoidSymbol(Xy at, double reach) {
    avoidSymbol(at.plus(-reach, -reach), at.plus(reach, reach));
    avoidSymbol(at.plus(-reach, reach), at.plus(reach, -reach));
  }

  /** An outline of a region or a measured line; leaders had better not cross it either. */
  public void avoidOutline(Xy from, Xy to) {
    linework.add(from, to, Linework.Kind.OUTLINE);
  }
}
