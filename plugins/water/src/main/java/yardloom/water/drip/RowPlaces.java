package yardloom.water.drip;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Where the rows of one bed lie: from its edge, and from its plants.
 *
 * @param first from the edge of the bed to the middle of its nearest row; round a tree from the
 *     trunk to its nearest ring
 * @param apart from one row to the next; rings share the ground evenly, so not always as asked.
 *     Empty with a single row
 * @param reach how far to each side of a row an outlet wets the soil
 * @param farthest the plant that stands farthest from a row; empty round a tree, and without plants
 */
record RowPlaces(
    Length first, Optional<Length> apart, Derived<Length> reach, Optional<Far> farthest) {
  /** A kind of plant, and how far one of it stands from the nearest row. */
  record Far(String plant, Length from) {}

  /** Half the width of a small pot (common practice). */
  private static final Length BALL = Length.inches(2);

  private static final Source HALF =
      Source.commonPractice("an outlet wets as far to one side as to the other");

  static RowPlaces of(Plan plan, DripRun run, Facts facts) {
    return new RowPlaces(
        first(plan, run),
        apart(run.rows()),
        reach(run.choice(), facts),
        run.reachesRootBalls() ? farthest(run, facts) : Optional.empty());
  }

  private static Derived<Length> reach(DripChoice choice, Facts facts) {
    Derived<Length> width = WettedGround.width(facts.find(YardFacts.SOIL), choice.emitter());
    return Derived.by("wetted width / 2", HALF)
        .from("wetted width", width)
        .gives(width.value().div(2));
  }

  /** Farther from a row water comes to a root ball only once roots have grown towards it. */
  static Length wetsBallWithin(DripChoice choice, Facts facts) {
    return toBall(reach(choice, facts));
  }

  private static Length toBall(Derived<Length> reach) {
    return reach.value().plus(BALL);
  }

  /** The farthest plant, where its root ball gets no water. */
  Optional<Far> outOfReach() {
    return farthest.filter(f -> f.from().compareTo(toBall(reach)) > 0);
  }

  private static Length first(Plan plan, DripRun run) {
    if (plan.element(run.bed()).orElse(null) instanceof Element.Tree tree) {
      return toRow(run.rows(), tree.at());
    }
    List<Line> edges = run.on().shape().parts().stream().map(Shape::outline).toList();
    return run.rows().stream()
        .map(row -> toRow(edges, row.middle()))
        .min(Length::compareTo)
        .orElseThrow();
  }

  private static Optional<Length> apart(List<Line> rows) {
    return rows.stream()
        .flatMap(
            row ->
                rows.stream()
                    .filter(other -> other != row)
                    .map(other -> other.nearest(row.middle()).distance(row.middle())))
        .min(Length::compareTo);
  }

  private static Optional<Far> farthest(DripRun run, Facts facts) {
    return run.plants(facts).stream()
        .filter(stand -> stand.in().kind() == ElementKind.BED && !stand.planted().stands())
        .flatMap(stand -> far(stand, run.rows()).stream())
        .max(Comparator.comparing(Far::from).thenComparing(Far::plant));
  }

  private static Optional<Far> far(Stand stand, List<Line> rows) {
    return stand.placed().at().stream()
        .map(at -> toRow(rows, at))
        .max(Length::compareTo)
        .map(from -> new Far(stand.plant(), from));
  }

  /** From a point to the nearest of them, at least one. */
  static Length toRow(List<Line> rows, Point at) {
    return rows.stream()
        .map(row -> row.nearest(at).distance(at))
        .min(Length::compareTo)
        .orElseThrow();
  }
}
