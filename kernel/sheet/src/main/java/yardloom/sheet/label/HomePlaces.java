package yardloom.sheet.label;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;
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

  HomePlaces(LabelSpace space, Rivals rivals) {
    this.space = space;
    this.rivals = rivals;
  }

  LabelOffer best(LabelRequest request) {
    return request.ground().isPresent() ? atTheGround(request) : atThePoint(request);
  }

  private LabelOffer atThePoint(LabelRequest request) {
    LabelOffer best = LabelOffer.NONE;
    for (int i = 0; i < SIDES.size(); i++) {
      Box box =
          LedPlaces.beside(request, SIDES.get(i), request.isNumber() ? GAP_OF_NUMBER_MM : GAP_MM);
      double least = PER_SIDE * i;
      if (least < best.cost() && space.isFree(Quad.of(box)) && rivals.isNearest(box, request)) {
        double line = request.isNumber() ? PER_CROSSING_OF_NUMBER : PER_CROSSING;
        double cost = least + space.linework().cost(box, line, best.cost() - least);
        best = best.orCheaper(new LabelSpot(box, Optional.empty(), false), cost);
      }
    }
    return best;
  }

  private LabelOffer atTheGround(LabelRequest request) {
    Footprint ground = request.ground().orElseThrow();
    boolean only = request.stand() == Anchor.INSIDE;
    double symbol = only ? PER_CROSSING_INSIDE : PER_SYMBOL_INSIDE;
    LabelOffer best = inTheGround(ground, GroundPlaces.in(ground, request), symbol);
    if (only) {
      return best;
    }
    for (GroundPlaces.Candidate c : GroundPlaces.beside(ground, request, GAP_TO_GROUND_MM)) {
      if (c.cost() < best.cost()
          && space.isFree(Quad.of(c.box()))
          && rivals.isNearest(c.box(), request)) {
        double most = best.cost() - c.cost();
        double cost = c.cost() + space.linework().cost(c.box(), PER_CROSSING, most);
        best = best.orCheaper(new LabelSpot(c.box(), Optional.empty(), c.upright()), cost);
      }
    }
    return best;
  }

  /** The first of the cheapest; from the cheapest place on, so that few have to be looked at. */
  private LabelOffer inTheGround(
      Footprint ground, List<GroundPlaces.Candidate> places, double perSymbol) {
    int[] byCost =
        IntStream.range(0, places.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> places.get(i).cost()))
            .mapToInt(Integer::intValue)
            .toArray();
    Linework.Price price = new Linework.Price(PER_CROSSING_INSIDE, PER_CROSSING, perSymbol);
    LabelOffer best = LabelOffer.NONE;
    int bestAt = places.size();
    for (int i : byCost) {
      GroundPlaces.Candidate c = places.get(i);
      if (c.cost() > best.cost()) {
        break;
      }
      if (ground.contains(c.box()) && space.isFree(Quad.of(c.box()))) {
        Linework.Under under = space.linework().under(c.box(), price, best.cost() - c.cost());
        double cost =
            c.cost()
                + PER_CROSSING * under.outlines()
                + PER_CROSSING_INSIDE * under.all()
                + perSymbol * under.symbols();
        if (cost < best.cost() || cost == best.cost() && i < bestAt) {
          best = new LabelOffer(new LabelSpot(c.box(), Optional.empty(), c.upright()), cost);
          bestAt = i;
        }
      }
    }
    return best;
  }
}
