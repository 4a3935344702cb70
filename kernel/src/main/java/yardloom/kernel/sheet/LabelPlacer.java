package yardloom.kernel.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Finds places for labels so that none overlaps another, a text already set, or the edge of the
 * drawing.
 *
 * <p>Greedy by rank: each label takes the best free candidate and keeps it. Candidates next to the
 * point come in the order of {@link #SIDES} (above first), then places further off with a leader
 * line, last any free place of the drawing. Lines of the drawing under a label cost, but do not
 * forbid. Same input, same result.
 *
 * <p>References: [1] J. Christensen, J. Marks, S. Shieber, An empirical study of algorithms for
 * point-feature label placement, ACM Transactions on Graphics 14(3), 1995, pp. 203-232: candidate
 * positions. [2] P. Bobák, L. Čmolík, M. Čadík, arXiv 2407.11996, 2024: readers prefer labels above
 * the point.
 */
final class LabelPlacer {
  /** Directions from the point to the label's middle, preferred first; y down. */
  static final List<Xy> SIDES =
      List.of(
          new Xy(0, -1),
          new Xy(1, -1),
          new Xy(1, 0),
          new Xy(-1, -1),
          new Xy(-1, 0),
          new Xy(0, 1),
          new Xy(1, 1),
          new Xy(-1, 1));

  private static final double[] RINGS_MM = {4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 23, 30, 40, 52, 66};
  private static final int RING_DIRECTIONS = 16;
  private static final double GAP_MM = 1;
  private static final double CLEAR_MM = 0.4;

  /** Costs: a place further down the list, a line under the text, a leader and its length. */
  private static final double PER_SIDE = 0.5;

  private static final double PER_CROSSING = 4;
  private static final double LEADER = 16;
  private static final double LEADER_PER_MM = 0.5;
  private static final double PER_LEADER_CROSSED = 10;
  private static final double PER_OUTLINE_CROSSED = 3;

  /**
   * A label to place.
   *
   * @param widthMm along its lines
   * @param heightMm across its lines
   * @param fixed whether it stands centred on its point if that is free
   * @param orNone whether it is left out if that is taken
   * @param upright whether its lines run up the sheet when it does
   */
  record Request(
      Xy anchor,
      double widthMm,
      double heightMm,
      int rank,
      boolean fixed,
      boolean orNone,
      boolean upright) {
    /** A label that finds another place when its own is taken. */
    Request(Xy anchor, double widthMm, double heightMm, int rank, boolean fixed, boolean upright) {
      this(anchor, widthMm, heightMm, rank, fixed, false, upright);
    }
  }

  /** Where a label stands; the leader is empty if it stands at its point. */
  record Spot(Box box, Optional<Xy> leaderTo, boolean upright) {}

  private record Segment(Xy from, Xy to, boolean outline) {}

  private final Box area;
  private final List<Quad> taken = new ArrayList<>();
  private final List<Segment> leaders = new ArrayList<>();
  private final List<Segment> lines = new ArrayList<>();
  private STRtree index;

  LabelPlacer(Box area) {
    this.area = area;
  }

  /** Keeps labels off {@code quad}. */
  void take(Quad quad) {
    taken.add(quad);
  }

  boolean isFree(Quad quad) {
    return quad.inside(area)
        && taken.stream().noneMatch(quad::overlaps)
        && leaders.stream().noneMatch(l -> quad.crossedBy(l.from, l.to));
  }

  /** A line of the drawing that labels had better not cross. */
  void avoid(Xy from, Xy to) {
    lines.add(new Segment(from, to, false));
    index = null;
  }

  /** An outline of a region, which labels had better not cross either. */
  void avoidOutline(Xy from, Xy to) {
    lines.add(new Segment(from, to, true));
    index = null;
  }

  /** How many outlines of regions run under {@code box}. */
  long outlinesUnder(Box box) {
    return under(box).filter(Segment::outline).count();
  }

  /** How many lines of the drawing run under {@code box}. */
  private long crossings(Box box) {
    return under(box).count();
  }

  private Stream<Segment> under(Box box) {
    Envelope around = new Envelope(box.x(), box.right(), box.y(), box.bottom());
    List<Segment> near = new ArrayList<>();
    index().query(around, found -> near.add((Segment) found));
    return near.stream().filter(s -> box.isCrossedBy(s.from, s.to));
  }

  private STRtree index() {
    if (index == null) {
      index = new STRtree();
      for (Segment s : lines) {
        index.insert(new Envelope(s.from.x(), s.to.x(), s.from.y(), s.to.y()), s);
      }
    }
    return index;
  }

  /** Places for {@code requests}, in their order; empty where the drawing is full. */
  List<Optional<Spot>> place(List<Request> requests) {
    List<Optional<Spot>> spots = new ArrayList<>();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < requests.size(); i++) {
      order.add(i);
      spots.add(Optional.empty());
    }
    order.sort(
        Comparator.comparing((Integer i) -> requests.get(i).rank())
            .thenComparing(i -> !requests.get(i).fixed())
            .thenComparing(i -> i));
    List<Xy> anchors = requests.stream().filter(r -> !r.fixed()).map(Request::anchor).toList();
    for (int i : order) {
      Optional<Spot> spot = place(requests.get(i), anchors);
      spot.ifPresent(s -> keep(s, requests.get(i)));
      spots.set(i, spot);
    }
    return spots;
  }

  private void keep(Spot spot, Request request) {
    taken.add(Quad.of(spot.box().inset(-CLEAR_MM)));
    spot.leaderTo().ifPresent(to -> leaders.add(new Segment(request.anchor(), to, false)));
  }

  private record Offer(Spot spot, double cost) {
    static final Offer NONE = new Offer(null, Double.MAX_VALUE);

    Offer orCheaper(Spot other, double otherCost) {
      return otherCost < cost ? new Offer(other, otherCost) : this;
    }
  }

  private Optional<Spot> place(Request request, List<Xy> anchors) {
    if (request.fixed()) {
      boolean upright = request.upright();
      Box centred =
          Box.around(
              request.anchor(),
              upright ? request.heightMm() : request.widthMm(),
              upright ? request.widthMm() : request.heightMm());
      if (isFree(Quad.of(centred))) {
        return Optional.of(new Spot(centred, Optional.empty(), upright));
      }
      if (request.orNone()) {
        return Optional.empty();
      }
    }
    Offer near = atThePoint(request, anchors);
    Offer best = ledTo(request, near);
    return best == Offer.NONE ? anywhere(request) : Optional.of(best.spot());
  }

  private Offer atThePoint(Request request, List<Xy> anchors) {
    Offer best = Offer.NONE;
    for (int i = 0; i < SIDES.size(); i++) {
      Box box = beside(request, SIDES.get(i), GAP_MM);
      double least = PER_SIDE * i;
      if (least < best.cost()
          && isFree(Quad.of(box))
          && isNearest(box, request.anchor(), anchors)) {
        double cost = least + PER_CROSSING * crossings(box);
        best = best.orCheaper(new Spot(box, Optional.empty(), false), cost);
      }
    }
    return best;
  }

  /** The cheapest place with a leader, if it is cheaper than {@code near}. */
  private Offer ledTo(Request request, Offer near) {
    Offer best = near;
    for (double ring : RINGS_MM) {
      if (best.cost() < LEADER + LEADER_PER_MM * ring) {
        break;
      }
      for (int d = 0; d < RING_DIRECTIONS; d++) {
        double angle = 2 * Math.PI * d / RING_DIRECTIONS;
        Xy direction = new Xy(StrictMath.sin(angle), -StrictMath.cos(angle));
        Box box = beside(request, direction, ring);
        Xy to = box.nearest(request.anchor());
        double least = LEADER + LEADER_PER_MM * ring + 0.01 * d;
        if (least < best.cost() && isFree(Quad.of(box)) && leaderIsFree(request.anchor(), to)) {
          double cost = least + PER_CROSSING * crossings(box) + crossingCost(request.anchor(), to);
          best = best.orCheaper(new Spot(box, Optional.of(to), false), cost);
        }
      }
    }
    return best;
  }

  /** A leader that crosses others, or the outlines of things it does not belong to, misleads. */
  private double crossingCost(Xy from, Xy to) {
    long crossed = leaders.stream().filter(l -> Quad.isCrossing(from, to, l.from, l.to)).count();
    List<Segment> near = new ArrayList<>();
    index()
        .query(
            new Envelope(from.x(), to.x(), from.y(), to.y()), found -> near.add((Segment) found));
    long outlines =
        near.stream().filter(s -> s.outline && Quad.isCrossing(from, to, s.from, s.to)).count();
    return PER_LEADER_CROSSED * crossed + PER_OUTLINE_CROSSED * outlines;
  }

  /** The free place of the whole drawing that is nearest to the point. */
  private Optional<Spot> anywhere(Request request) {
    List<Box> boxes = new ArrayList<>();
    double stepX = request.widthMm() / 2 + 1;
    double stepY = request.heightMm() + 0.5;
    for (double y = area.y(); y + request.heightMm() <= area.bottom(); y += stepY) {
      for (double x = area.x(); x + request.widthMm() <= area.right(); x += stepX) {
        boxes.add(new Box(x, y, request.widthMm(), request.heightMm()));
      }
    }
    return boxes.stream()
        .sorted(Comparator.comparing((Box b) -> b.centre().distance(request.anchor())))
        .filter(b -> isFree(Quad.of(b)))
        .filter(b -> leaderIsFree(request.anchor(), b.nearest(request.anchor())))
        .findFirst()
        .map(b -> new Spot(b, Optional.of(b.nearest(request.anchor())), false));
  }

  /** A text that already covers the point cannot be avoided; it is drawn over the leader. */
  private boolean leaderIsFree(Xy from, Xy to) {
    return taken.stream().noneMatch(q -> q.crossedBy(from, to) && q.distance(from) > 0);
  }

  private static Box around(Request r, Xy middle) {
    return Box.around(middle, r.widthMm(), r.heightMm());
  }

  private static Box beside(Request r, Xy direction, double gap) {
    double x = direction.x() * (r.widthMm() / 2 + gap);
    double y = direction.y() * (r.heightMm() / 2 + gap);
    return around(r, r.anchor().plus(x, y));
  }

  private static boolean isNearest(Box box, Xy anchor, List<Xy> anchors) {
    Quad quad = Quad.of(box);
    double own = quad.distance(anchor);
    return anchors.stream().allMatch(a -> a.equals(anchor) || quad.distance(a) > own);
  }
}
