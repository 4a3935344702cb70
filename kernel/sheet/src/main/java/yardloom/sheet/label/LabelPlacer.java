package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Quad;

/**
 * Finds places for labels so that none overlaps another, a text already set, or the edge of the
 * drawing.
 *
 * <p>Greedy by rank: each label takes the best free candidate and keeps it. No leader crosses
 * another. Candidates next to what is named come first ({@link HomePlaces}), then places further
 * off with a leader line, last any free place of the drawing ({@link LedPlaces}). Lines of the
 * drawing under a label cost, but do not forbid. Same input, same result.
 *
 * <p>References: [1] J. Christensen, J. Marks, S. Shieber, An empirical study of algorithms for
 * point-feature label placement, ACM Transactions on Graphics 14(3), 1995, pp. 203-232: candidate
 * positions. [2] P. Bobák, L. Čmolík, M. Čadík, arXiv 2407.11996, 2024: readers prefer labels above
 * the point. [3] D. Joslin, D. Clements, Squeaky wheel optimization, Journal of Artificial
 * Intelligence Research 10, 1999, pp. 353-373 (from memory): what fared badly is served first.
 */
final class LabelPlacer {
  private static final double CLEAR_MM = 0.4;

  /** What it costs that a label stands nowhere. */
  private static final double HOMELESS = 200;

  /** How often all is set anew at most; once for very many labels, since that takes long. */
  private static final int ROUNDS = 5;

  static final int MANY = 250;

  /** The last rank that is worth a leader. */
  static final int LAST_LED = 4;

  private final LabelSpace space;
  private List<LabelRequest> all = List.of();
  private HomePlaces home;
  private LedPlaces led;

  LabelPlacer(LabelSpace space) {
    this.space = space;
  }

  /**
   * Places for {@code requests}, in their order; empty where the drawing is full. Where some stand
   * badly, those are set first in their rank and all are set again; the cheapest of these rounds
   * counts.
   */
  List<Optional<LabelSpot>> place(List<LabelRequest> requests) {
    all = List.copyOf(requests);
    Rivals rivals = new Rivals(all);
    home = new HomePlaces(space, rivals);
    led = new LedPlaces(space, rivals);
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
  private record Round(List<Optional<LabelSpot>> spots, double cost, List<Integer> bad) {}

  private Round round(Set<Integer> first) {
    List<Optional<LabelSpot>> spots = new ArrayList<>();
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
              LabelOffer offer = offer(all.get(i));
              spots.set(i, Optional.ofNullable(offer.spot()));
              keep(spots.get(i));
              cost[0] += Math.min(offer.cost(), HOMELESS);
              if (offer.cost() >= LedPlaces.ON_FOREIGN_GROUND && all.get(i).rank() <= LAST_LED) {
                bad.add(i);
              }
            });
    return new Round(spots, cost[0], bad);
  }

  private void keep(Optional<LabelSpot> spot) {
    spot.ifPresent(s -> space.take(Quad.of(s.box().inset(-CLEAR_MM))));
    spot.flatMap(LabelSpot::leader).ifPresent(l -> space.takeLeader(l.from(), l.to()));
  }

  private LabelOffer offer(LabelRequest request) {
    if (request.isCentred()) {
      Box centred = request.around(request.anchor(), request.upright());
      if (isClear(request, centred) && space.isFree(Quad.of(centred))) {
        return new LabelOffer(new LabelSpot(centred, Optional.empty(), request.upright()), 0);
      }
      if (request.stand() == Anchor.FIXED) {
        return LabelOffer.NONE;
      }
    }
    LabelOffer near = home.best(request);
    if (request.rank() > LAST_LED) {
      return near;
    }
    LabelOffer best = led.orLed(request, near);
    if (best.cost() <= LedPlaces.FAR || request.isNumber()) {
      return best;
    }
    LabelOffer anywhere = led.anywhere(request);
    return anywhere.cost() < best.cost() ? anywhere : best;
  }

  /** Whether it lies in its ground, on no line or symbol; that of a point may lie anywhere. */
  private boolean isClear(LabelRequest request, Box box) {
    return request.ground().map(g -> g.contains(box) && space.linework().isBare(box)).orElse(true);
  }
}
