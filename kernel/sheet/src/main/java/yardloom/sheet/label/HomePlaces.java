package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Xy;

/**
 * The cheapest place of a label without a leader: at its point, or in its ground or along the edge
 * of that ({@link GroundPlaces}).
 */
final class HomePlaces {
  /** Directions from the point to the label's middle, preferred first; y down. */
  private static final List<Xy> SIDES =
      List.of(
          new Xy(0, -1),
          new Xy(1, -1),
          new Xy(1, 0),
          new Xy(-1, -1),
          new Xy(-1, 0),
          new Xy(0, 1),
          new Xy(1, 1),
          new Xy(-1, 1));

  private static final double GAP_MM = 1;

  /** Beside the dot of a numbered point; a line under a figure or two is no harm. */
  private static final double GAP_OF_NUMBER_MM = 0.6;

  private static final double PER_CROSSING_OF_NUMBER = 1.5;

  /** Beside ground; narrow, so that it is clear between two beds which of them is meant. */
  private static final double GAP_TO_GROUND_MM = 0.5;

  /** Costs: a place further down the list, a line under the text. */
  private static final double PER_SIDE = 0.5;

  static final double PER_CROSSING = 4;

  /** Hatches and rows of pipe have to lie under some text; plants are drawn to be seen. */
  private static final double PER_CROSSING_INSIDE = 0.4;

  private static final double PER_SYMBOL_INSIDE = 2.5;

  private final LabelSpace space;
  private final Rivals rivals;

  /** In the ground of each label. */
  private final Map<LabelRequest, Inside> inside = new IdentityHashMap<>();

  /** About the point or beside the ground of each label. */
  private final Map<LabelRequest, List<Place>> known = new IdentityHashMap<>();

  HomePlaces(LabelSpace space, Rivals rivals) {
    this.space = space;
    this.rivals = rivals;
  }

  LabelOffer best(LabelRequest request) {
    return request.ground().isPresent() ? atTheGround(request) : atThePoint(request);
  }

  private LabelOffer atThePoint(LabelRequest request) {
    double line = request.isNumber() ? PER_CROSSING_OF_NUMBER : PER_CROSSING;
    return cheapest(
        request,
        known.computeIfAbsent(request, HomePlaces::aboutThePoint),
        new Linework.Price(line, 0, 0),
        LabelOffer.NONE);
  }

  private static List<Place> aboutThePoint(LabelRequest request) {
    double gap = request.isNumber() ? GAP_OF_NUMBER_MM : GAP_MM;
    List<Place> places = new ArrayList<>();
    for (Xy side : SIDES) {
      places.add(new Place(LedPlaces.beside(request, side, gap), false, PER_SIDE * places.size()));
    }
    return places;
  }

  /** The first of the cheapest of those that no other label could claim. */
  private LabelOffer cheapest(
      LabelRequest request, List<Place> places, Linework.Price price, LabelOffer known) {
    LabelOffer best = known;
    for (Place p : places) {
      if (p.cost() < best.cost()
          && space.isFree(p.quad())
          && p.isAllowed(() -> rivals.isNearest(p.box(), request))) {
        Linework.Under under = p.under(space.linework(), price, best.cost() - p.cost());
        best =
            best.orCheaper(
                new LabelSpot(p.box(), tick(request, p.box()), p.upright()),
                p.cost() + price.each() * under.all());
      }
    }
    return best;
  }

  /** A stroke to the ground that a text beside it names, so that it is not read as another's. */
  private Optional<LabelSpot.Leader> tick(LabelRequest request, Box box) {
    if (request.ground().isEmpty() || !request.isCentred()) {
      return Optional.empty();
    }
    LabelSpot.Leader tick = LedPlaces.leader(request, box);
    return Optional.of(tick).filter(t -> space.isLeaderFree(t.from(), t.to()));
  }

  private LabelOffer atTheGround(LabelRequest request) {
    Footprint ground = request.ground().orElseThrow();
    boolean only = request.stand() == Anchor.INSIDE;
    double symbol = only ? PER_CROSSING_INSIDE : PER_SYMBOL_INSIDE;
    LabelOffer best = inTheGround(request, ground, symbol);
    return only
        ? best
        : cheapest(
            request,
            known.computeIfAbsent(request, r -> GroundPlaces.beside(ground, r, GAP_TO_GROUND_MM)),
            new Linework.Price(PER_CROSSING, 0, 0),
            best);
  }

  /** Places and their numbers from the cheapest on, so that few have to be looked at. */
  private record Inside(List<Place> places, int[] byCost) {
    static Inside of(Footprint ground, LabelRequest request) {
      List<Place> places = GroundPlaces.in(ground, request);
      int[] byCost =
          IntStream.range(0, places.size())
              .boxed()
              .sorted(Comparator.comparingDouble(i -> places.get(i).cost()))
              .mapToInt(Integer::intValue)
              .toArray();
      return new Inside(places, byCost);
    }
  }

  /** The first of the cheapest. */
  private LabelOffer inTheGround(LabelRequest request, Footprint ground, double perSymbol) {
    Linework.Price price = new Linework.Price(PER_CROSSING_INSIDE, PER_CROSSING, perSymbol);
    LabelOffer best = LabelOffer.NONE;
    Inside all = inside.computeIfAbsent(request, r -> Inside.of(ground, r));
    int bestAt = all.places().size();
    for (int i : all.byCost()) {
      Place p = all.places().get(i);
      if (p.cost() > best.cost()) {
        break;
      }
      if (p.isAllowed(() -> ground.contains(p.box())) && space.isFree(p.quad())) {
        Linework.Under under = p.under(space.linework(), price, best.cost() - p.cost());
        double cost =
            p.cost()
                + PER_CROSSING * under.outlines()
                + PER_CROSSING_INSIDE * under.all()
                + perSymbol * under.symbols();
        if (cost < best.cost() || cost == best.cost() && i < bestAt) {
          best = new LabelOffer(new LabelSpot(p.box(), Optional.empty(), p.upright()), cost);
          bestAt = i;
        }
      }
    }
    return best;
  }
}
