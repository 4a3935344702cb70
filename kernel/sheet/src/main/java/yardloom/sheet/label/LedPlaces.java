package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Xy;

/** The cheapest place of a label to which a leader runs from what it names. */
final class LedPlaces {
  private static final double[] RINGS_MM = {4, 5, 6, 7, 8, 10, 12, 14, 17, 20, 23, 30, 40, 52, 66};
  private static final int RING_DIRECTIONS = 16;

  /** How far a leader reaches into the ground that it belongs to. */
  static final double INTO_GROUND_MM = 1.2;

  /** Costs: a leader and its length. */
  private static final double LEADER = 16;

  private static final double LEADER_PER_MM = 0.5;

  /** A led text on ground that another label names is read as that ground's. */
  static final double ON_FOREIGN_GROUND = 30;

  /** The more so if it names a ground itself; what names a point is read at its leader. */
  private static final double GROUND_ON_GROUND = 20;

  /** The more so in a house, in which nothing of the yard is. */
  private static final double IN_SOLID_GROUND = 20;

  /** What costs more than this stands badly: a free place further off may be better. */
  static final double FAR = 45;

  /** A long line over a house or other beds seems to belong to these. */
  private static final double OVER_OTHERS_PER_MM = 0.6;

  /** Of the free places by distance; those further off have longer leaders. */
  private static final int MOST_TRIED = 60;

  /** The eye does not follow a longer line; a number is read at its point or not at all. */
  private static final double FARTHEST_MM = 90;

  private static final double FARTHEST_NUMBER_MM = 17;

  private static final Linework.Price PER_LINE = new Linework.Price(HomePlaces.PER_CROSSING, 0, 0);

  private final LabelSpace space;
  private final Rivals rivals;

  /** The rings about what each label names, as far as they were looked at. */
  private final Map<LabelRequest, List<Led[]>> known = new IdentityHashMap<>();

  LedPlaces(LabelSpace space, Rivals rivals) {
    this.space = space;
    this.rivals = rivals;
  }

  /** A place and the leader to it. */
  private record Led(Place place, LabelSpot.Leader leader) {}

  /** The cheapest place with a leader, if it is cheaper than {@code near}. */
  LabelOffer orLed(LabelRequest request, LabelOffer near) {
    List<Led[]> rings = known.computeIfAbsent(request, r -> new ArrayList<>());
    LabelOffer best = near;
    for (int i = 0; i < RINGS_MM.length; i++) {
      double ring = RINGS_MM[i];
      if (best.cost() < LEADER + LEADER_PER_MM * ring
          || request.isNumber() && ring > FARTHEST_NUMBER_MM) {
        break;
      }
      if (i == rings.size()) {
        rings.add(ring(request, ring));
      }
      for (Led led : rings.get(i)) {
        if (led.place().cost() < best.cost() && isFree(led)) {
          best = orCheaper(best, request, led);
        }
      }
    }
    return best;
  }

  private static Led[] ring(LabelRequest request, double ring) {
    Led[] all = new Led[RING_DIRECTIONS];
    for (int d = 0; d < RING_DIRECTIONS; d++) {
      double angle = 2 * Math.PI * d / RING_DIRECTIONS;
      Xy direction = new Xy(StrictMath.sin(angle), -StrictMath.cos(angle));
      Box box = beside(request, direction, ring);
      double least = LEADER + LEADER_PER_MM * ring + 0.01 * d;
      all[d] = new Led(new Place(box, false, least), leader(request, box));
    }
    return all;
  }

  private boolean isFree(Led led) {
    return space.isFree(led.place().quad())
        && space.isLeaderFree(led.leader().from(), led.leader().to());
  }

  private LabelOffer orCheaper(LabelOffer best, LabelRequest request, Led led) {
    Place p = led.place();
    double most = best.cost() - p.cost();
    double cost = p.cost() + PER_LINE.each() * p.under(space.linework(), PER_LINE, most).all();
    if (cost >= best.cost()) {
      return best;
    }
    boolean foreign = !p.isAllowed(() -> !rivals.isOnForeignGround(p.box(), request));
    double crossed =
        p.more(() -> space.linework().crossingCost(led.leader().from(), led.leader().to()));
    return best.orCheaper(
        new LabelSpot(p.box(), Optional.of(led.leader()), false),
        cost + (foreign ? onForeignGround(p.box(), request) : 0) + crossed);
  }

  private double onForeignGround(Box box, LabelRequest request) {
    return ON_FOREIGN_GROUND
        + (request.ground().isPresent() ? GROUND_ON_GROUND : 0)
        + (rivals.isInSolidGround(box, request) ? IN_SOLID_GROUND : 0);
  }

  /** From the point, or from just inside the edge of the ground where that is nearest. */
  static LabelSpot.Leader leader(LabelRequest request, Box box) {
    Xy from =
        request
            .ground()
            .map(g -> inward(g, g.nearest(box.nearest(request.anchor())), request.anchor()))
            .orElse(request.anchor());
    return new LabelSpot.Leader(from, box.nearest(from));
  }

  /** Not through what is as thin as a fence. */
  private static Xy inward(Footprint ground, Xy edge, Xy heart) {
    double way = edge.distance(heart);
    double share = way == 0 ? 0 : Math.min(1, INTO_GROUND_MM / way);
    Xy inside = edge.towards(heart, share);
    return ground.contains(inside) ? inside : edge;
  }

  /**
   * The cheapest of the free places of the drawing that are nearest to the point, if there are any
   * near enough; none on ground that another label names.
   */
  LabelOffer anywhere(LabelRequest request) {
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
    boxes.sort(Comparator.comparing((Box b) -> b.centre().distance(request.anchor())));
    List<LabelSpot> free =
        boxes.stream()
            .filter(b -> space.isFree(Quad.of(b)) && !rivals.isOnForeignGround(b, request))
            .map(b -> new LabelSpot(b, Optional.of(leader(request, b)), false))
            .filter(s -> s.leader().filter(l -> space.isLeaderFree(l.from(), l.to())).isPresent())
            .limit(MOST_TRIED)
            .toList();
    LabelOffer best = LabelOffer.NONE;
    for (LabelSpot spot : free) {
      LabelSpot.Leader leader = spot.leader().orElseThrow();
      double cost =
          LEADER
              + LEADER_PER_MM * leader.from().distance(leader.to())
              + OVER_OTHERS_PER_MM * rivals.mmOverOthers(leader.from(), leader.to(), request)
              + space.linework().crossingCost(leader.from(), leader.to());
      if (cost < best.cost()) {
        double most = best.cost() - cost;
        Linework.Price price = new Linework.Price(HomePlaces.PER_CROSSING, 0, 0);
        cost += price.each() * space.linework().under(spot.box(), price, most).all();
        best = best.orCheaper(spot, cost);
      }
    }
    return best;
  }

  /**
   * Beside what the label names, {@code gap} millimetres off in a direction of {@code 1} or less.
   */
  static Box beside(LabelRequest r, Xy direction, double gap) {
    Optional<Box> bounds = r.ground().map(Footprint::bounds);
    Xy middle = bounds.map(Box::centre).orElse(r.anchor());
    double halfWidth = bounds.map(b -> b.width() / 2).orElse(0.0);
    double halfHeight = bounds.map(b -> b.height() / 2).orElse(0.0);
    double x = direction.x() * (halfWidth + r.widthMm() / 2 + gap);
    double y = direction.y() * (halfHeight + r.heightMm() / 2 + gap);
    return r.around(middle.plus(x, y), false);
  }
}
