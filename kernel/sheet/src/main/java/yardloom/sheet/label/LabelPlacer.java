package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/**
 * Finds places for labels so that none overlaps another, a text already set, or the edge of the
 * drawing.
 *
 * <p>Greedy by rank: each label takes the best free candidate and keeps it. No leader crosses
 * another. Candidates next to the point come in the order of {@link #SIDES} (above first), then
 * places further off with a leader line, last any free place of the drawing. A label of ground may
 * also stand in it, or along its edge ({@link GroundPlaces}). Lines of the drawing under a label
 * cost, but do not forbid. Same input, same result.
 *
 * <p>References: [1] J. Christensen, J. Marks, S. Shieber, An empirical study of algorithms for
 * point-feature label placement, ACM Transactions on Graphics 14(3), 1995, pp. 203-232: candidate
 * positions. [2] P. Bobák, L. Čmolík, M. Čadík, arXiv 2407.11996, 2024: readers prefer labels above
 * the point. [3] D. Joslin, D. Clements, Squeaky wheel optimization, Journal of Artificial
 * Intelligence Research 10, 1999, pp. 353-373 (from memory): what fared badly is served first.
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

  /** Beside the dot of a numbered point; a line under a figure or two is no harm. */
  private static final double GAP_OF_NUMBER_MM = 0.6;

  private static final double PER_CROSSING_OF_NUMBER = 1.5;
  private static final double CLEAR_MM = 0.4;

  /** Beside ground; narrow, so that it is clear between two beds which of them is meant. */
  private static final double GAP_TO_GROUND_MM = 0.5;

  /** How far a leader reaches into the ground that it belongs to. */
  private static final double INTO_GROUND_MM = 1.2;

  /** Costs: a place further down the list, a line under the text, a leader and its length. */
  private static final double PER_SIDE = 0.5;

  private static final double PER_CROSSING = 4;

  /** Hatches and rows of pipe have to lie under some text; plants are drawn to be seen. */
  private static final double PER_CROSSING_INSIDE = 0.4;

  private static final double PER_SYMBOL_INSIDE = 2.5;

  /** A led text on ground that another label names is read as that ground's. */
  private static final double ON_FOREIGN_GROUND = 30;

  /** Of a place anywhere, and of none at all. */
  private static final double FAR = 60;

  private static final double HOMELESS = 200;

  /** How often all is set anew at most; once for very many labels, since that takes long. */
  private static final int ROUNDS = 5;

  private static final int MANY = 250;

  private static final double LEADER = 16;

  /** The last rank that is worth a leader. */
  static final int LAST_LED = 4;

  private static final double LEADER_PER_MM = 0.5;

  /** The eye does not follow a longer line; a number is read at its point or not at all. */
  private static final double FARTHEST_MM = 90;

  private static final double FARTHEST_NUMBER_MM = 17;

  /**
   * A label to place.
   *
   * @param widthMm along its lines
   * @param heightMm across its lines
   * @param stand whether it had better stand centred on its point
   * @param upright whether its lines run up the sheet when it does
   * @param ground what it names, if that is more than a point
   */
  record Request(
      Xy anchor,
      double widthMm,
      double heightMm,
      int rank,
      Anchor stand,
      boolean upright,
      Optional<Footprint> ground) {

    boolean isNumber() {
      return stand == Anchor.POINT;
    }

    boolean isCentred() {
      return stand == Anchor.CENTRE || stand == Anchor.FIXED || stand == Anchor.INSIDE;
    }

    /** Its room about {@code middle}. */
    Box around(Xy middle, boolean isUpright) {
      return Box.around(middle, isUpright ? heightMm : widthMm, isUpright ? widthMm : heightMm);
    }

    /** A cheap first answer, for most: its ground lies further from {@code box} than that. */
    boolean isBeyond(Box box, double mm) {
      return ground.filter(g -> box.isFurtherThan(mm, g.bounds())).isPresent();
    }

    double distance(Box box) {
      return ground.map(g -> g.distance(box)).orElseGet(() -> Quad.of(box).distance(anchor));
    }
  }

  /** A line from what a label names to the label. */
  record Leader(Xy from, Xy to) {}

  /** Where a label stands; the leader is empty if it stands at its point or ground. */
  record Spot(Box box, Optional<Leader> leader, boolean upright) {}

  /** A place and how bad it is without what it covers. */
  record Candidate(Box box, boolean upright, double cost) {}

  private final LabelSpace space;
  private List<Request> all = List.of();

  LabelPlacer(LabelSpace space) {
    this.space = space;
  }

  /**
   * Places for {@code requests}, in their order; empty where the drawing is full. Where some stand
   * badly, those are set first in their rank and all are set again; the cheapest of these rounds
   * counts.
   */
  List<Optional<Spot>> place(List<Request> requests) {
    all = List.copyOf(requests);
    LabelSpace.State before = space.state();
    Set<Integer> first = new TreeSet<>();
    Round best = null;
    int rounds = requests.size() > MANY ? 1 : ROUNDS;
    for (int i = 0; i < rounds; i++) {
      space.backTo(before);
      Round round = round(first);
      best = best == null || round.cost() < best.cost() ? round : best;
      if (!first.addAll(round.bad())) {
        break;
      }
    }
    space.backTo(before);
    best.spots().forEach(this::keep);
    return best.spots();
  }

  /** All labels set once. */
  private record Round(List<Optional<Spot>> spots, double cost, List<Integer> bad) {}

  private Round round(Set<Integer> first) {
    List<Optional<Spot>> spots = new ArrayList<>();
    all.forEach(r -> spots.add(Optional.empty()));
    List<Integer> bad = new ArrayList<>();
    double[] cost = {0};
    IntStream.range(0, all.size())
        .boxed()
        .sorted(
            Comparator.comparing((Integer i) -> all.get(i).rank())
                .thenComparing(i -> !first.contains(i))
                .thenComparing(i -> !all.get(i).isCentred()))
        .forEach(
            i -> {
              Offer offer = offer(all.get(i));
              spots.set(i, Optional.ofNullable(offer.spot()));
              keep(spots.get(i));
              cost[0] += Math.min(offer.cost(), HOMELESS);
              if (offer.cost() >= ON_FOREIGN_GROUND && all.get(i).rank() <= LAST_LED) {
                bad.add(i);
              }
            });
    return new Round(spots, cost[0], bad);
  }

  private void keep(Optional<Spot> spot) {
    spot.ifPresent(s -> space.take(Quad.of(s.box().inset(-CLEAR_MM))));
    spot.flatMap(Spot::leader).ifPresent(l -> space.takeLeader(l.from(), l.to()));
  }

  private record Offer(Spot spot, double cost) {
    static final Offer NONE = new Offer(null, Double.MAX_VALUE);

    Offer orCheaper(Spot other, double otherCost) {
      return otherCost < cost ? new Offer(other, otherCost) : this;
    }
  }

  private Offer offer(Request request) {
    if (request.isCentred()) {
      Box centred = request.around(request.anchor(), request.upright());
      if (isClear(request, centred) && space.isFree(Quad.of(centred))) {
        return new Offer(new Spot(centred, Optional.empty(), request.upright()), 0);
      }
      if (request.stand() == Anchor.FIXED) {
        return Offer.NONE;
      }
    }
    Offer near = request.ground().isPresent() ? atTheGround(request) : atThePoint(request);
    if (request.rank() > LAST_LED) {
      return near;
    }
    Offer best = ledTo(request, near);
    return best == Offer.NONE && !request.isNumber() ? anywhere(request) : best;
  }

  /** Whether it lies in its ground, on no line or symbol; that of a point may lie anywhere. */
  private boolean isClear(Request request, Box box) {
    return request.ground().map(g -> g.contains(box) && space.isBare(box)).orElse(true);
  }

  /** Lines of all kinds cost alike. */
  private static LabelSpace.Price lines(double each) {
    return new LabelSpace.Price(each, 0, 0);
  }

  private Offer atThePoint(Request request) {
    Offer best = Offer.NONE;
    for (int i = 0; i < SIDES.size(); i++) {
      Box box = beside(request, SIDES.get(i), request.isNumber() ? GAP_OF_NUMBER_MM : GAP_MM);
      double least = PER_SIDE * i;
      if (least < best.cost() && space.isFree(Quad.of(box)) && isNearest(box, request)) {
        double line = request.isNumber() ? PER_CROSSING_OF_NUMBER : PER_CROSSING;
        double cost = least + line * space.under(box, lines(line), best.cost() - least).all();
        best = best.orCheaper(new Spot(box, Optional.empty(), false), cost);
      }
    }
    return best;
  }

  private Offer atTheGround(Request request) {
    Footprint ground = request.ground().orElseThrow();
    boolean only = request.stand() == Anchor.INSIDE;
    double symbol = only ? PER_CROSSING_INSIDE : PER_SYMBOL_INSIDE;
    Offer best = inTheGround(ground, GroundPlaces.in(ground, request), symbol);
    if (only) {
      return best;
    }
    for (Candidate c : GroundPlaces.beside(ground, request, GAP_TO_GROUND_MM)) {
      if (c.cost() < best.cost() && space.isFree(Quad.of(c.box())) && isNearest(c.box(), request)) {
        double most = best.cost() - c.cost();
        double cost =
            c.cost() + PER_CROSSING * space.under(c.box(), lines(PER_CROSSING), most).all();
        best = best.orCheaper(new Spot(c.box(), Optional.empty(), c.upright()), cost);
      }
    }
    return best;
  }

  /** The first of the cheapest; from the cheapest place on, so that few have to be looked at. */
  private Offer inTheGround(Footprint ground, List<Candidate> places, double perSymbol) {
    int[] byCost =
        IntStream.range(0, places.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> places.get(i).cost()))
            .mapToInt(Integer::intValue)
            .toArray();
    LabelSpace.Price price = new LabelSpace.Price(PER_CROSSING_INSIDE, PER_CROSSING, perSymbol);
    Offer best = Offer.NONE;
    int bestAt = places.size();
    for (int i : byCost) {
      Candidate c = places.get(i);
      if (c.cost() > best.cost()) {
        break;
      }
      if (ground.contains(c.box()) && space.isFree(Quad.of(c.box()))) {
        LabelSpace.Under under = space.under(c.box(), price, best.cost() - c.cost());
        double cost =
            c.cost()
                + PER_CROSSING * under.outlines()
                + PER_CROSSING_INSIDE * under.all()
                + perSymbol * under.symbols();
        if (cost < best.cost() || cost == best.cost() && i < bestAt) {
          best = new Offer(new Spot(c.box(), Optional.empty(), c.upright()), cost);
          bestAt = i;
        }
      }
    }
    return best;
  }

  /** The cheapest place with a leader, if it is cheaper than {@code near}. */
  private Offer ledTo(Request request, Offer near) {
    Offer best = near;
    for (double ring : RINGS_MM) {
      if (best.cost() < LEADER + LEADER_PER_MM * ring
          || request.isNumber() && ring > FARTHEST_NUMBER_MM) {
        break;
      }
      for (int d = 0; d < RING_DIRECTIONS; d++) {
        double angle = 2 * Math.PI * d / RING_DIRECTIONS;
        Xy direction = new Xy(StrictMath.sin(angle), -StrictMath.cos(angle));
        Box box = beside(request, direction, ring);
        double least = LEADER + LEADER_PER_MM * ring + 0.01 * d;
        if (least < best.cost() && space.isFree(Quad.of(box))) {
          Leader leader = leader(request, box);
          if (space.isLeaderFree(leader.from(), leader.to())) {
            double cost =
                least
                    + PER_CROSSING
                        * space.under(box, lines(PER_CROSSING), best.cost() - least).all()
                    + (isOnForeignGround(box, request) ? ON_FOREIGN_GROUND : 0)
                    + space.crossingCost(leader.from(), leader.to());
            best = best.orCheaper(new Spot(box, Optional.of(leader), false), cost);
          }
        }
      }
    }
    return best;
  }

  /** From the point, or from just inside the edge of the ground where that is nearest. */
  private static Leader leader(Request request, Box box) {
    Xy from =
        request
            .ground()
            .map(g -> inward(g.nearest(box.nearest(request.anchor())), request.anchor()))
            .orElse(request.anchor());
    return new Leader(from, box.nearest(from));
  }

  private static Xy inward(Xy edge, Xy heart) {
    double way = edge.distance(heart);
    double share = way == 0 ? 0 : Math.min(1, INTO_GROUND_MM / way);
    return edge.plus((heart.x() - edge.x()) * share, (heart.y() - edge.y()) * share);
  }

  /** The free place of the drawing that is nearest to the point, if it is near enough. */
  private Offer anywhere(Request request) {
    List<Box> boxes = new ArrayList<>();
    Box area = space.area();
    double stepX = request.widthMm() / 2 + 1;
    double stepY = request.heightMm() + 0.5;
    for (double y = area.y(); y + request.heightMm() <= area.bottom(); y += stepY) {
      for (double x = area.x(); x + request.widthMm() <= area.right(); x += stepX) {
        Box box = new Box(x, y, request.widthMm(), request.heightMm());
        if (box.nearest(request.anchor()).distance(request.anchor()) <= FARTHEST_MM) {
          boxes.add(box);
        }
      }
    }
    return boxes.stream()
        .sorted(Comparator.comparing((Box b) -> b.centre().distance(request.anchor())))
        .filter(b -> space.isFree(Quad.of(b)))
        .map(b -> new Spot(b, Optional.of(leader(request, b)), false))
        .filter(s -> s.leader().filter(l -> space.isLeaderFree(l.from(), l.to())).isPresent())
        .findFirst()
        .map(s -> new Offer(s, FAR))
        .orElse(Offer.NONE);
  }

  private static Box beside(Request r, Xy direction, double gap) {
    Optional<Box> bounds = r.ground().map(Footprint::bounds);
    Xy middle = bounds.map(Box::centre).orElse(r.anchor());
    double halfWidth = bounds.map(b -> b.width() / 2).orElse(0.0);
    double halfHeight = bounds.map(b -> b.height() / 2).orElse(0.0);
    double x = direction.x() * (halfWidth + r.widthMm() / 2 + gap);
    double y = direction.y() * (halfHeight + r.heightMm() / 2 + gap);
    return r.around(middle.plus(x, y), false);
  }

  /** Whether no other label could claim the place: what that names is further off. */
  private boolean isNearest(Box box, Request request) {
    double own = request.distance(box);
    return rivals(request)
        .filter(other -> !request.isNumber() || other.isNumber())
        .allMatch(other -> other.isBeyond(box, own) || other.distance(box) > own);
  }

  /** Ground that another label names, unless what this one names lies in it as well. */
  private boolean isOnForeignGround(Box box, Request request) {
    return !request.isNumber() && isOnGroundOfOthers(box, request);
  }

  private boolean isOnGroundOfOthers(Box box, Request request) {
    for (Request r : all) {
      if (r.ground().isPresent() && !box.isFurtherThan(0, r.ground().get().bounds())) {
        Footprint g = r.ground().get();
        if (isRival(r, request) && g.distance(box) == 0 && !isWellInside(g, request.anchor())) {
          return true;
        }
      }
    }
    return false;
  }

  /** A tap on a wall is not in the house. */
  private static boolean isWellInside(Footprint ground, Xy point) {
    return ground.contains(point) && ground.nearest(point).distance(point) > INTO_GROUND_MM;
  }

  private Stream<Request> rivals(Request request) {
    return all.stream().filter(r -> isRival(r, request));
  }

  private static boolean isRival(Request r, Request request) {
    return (!r.isCentred() || r.ground().isPresent())
        && !r.anchor().equals(request.anchor())
        && !isSame(r.ground(), request.ground());
  }

  private static boolean isSame(Optional<Footprint> a, Optional<Footprint> b) {
    return a.isPresent() && a.equals(b);
  }
}
