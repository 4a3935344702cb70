package yardloom.water.drip;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import yardloom.facts.SoilProfile;
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
  static final Length BALL = Length.inches(2);

  private static final Source HALF =
      Source.commonPractice("an outlet wets as far to one side as to the other");

  static RowPlaces of(Plan plan, DripRun run, Facts facts) {
    Optional<SoilProfile> soil = facts.find(YardFacts.SOIL);
    Derived<Length> width = WettedGround.width(soil, run.choice().emitter());
    return new RowPlaces(
        first(plan, run),
        apart(run.rows()),
        Derived.by("wetted width / 2", HALF)
            .from("wetted width", width)
            .gives(width.value().div(2)),
        run.reachesRootBalls() ? farthest(run, facts) : Optional.empty());
  }

  /** Whether water comes to its root ball only once roots have grown towards the row. */
  boolean isOutOfReach() {
    Length wet = reach.value().plus(BALL);
    return farthest.filter(f -> f.from().compareTo(wet) > 0).isPresent();
  }

  private static Length first(Plan plan, DripRun run) {
    Predicate<Element.Tree> own = tree -> tree.id().equals(run.bed());
    Optional<Point> trunk =
        plan.all(Element.Tree.class).stream().filter(own).map(Element.Tree::at).findFirst();
    if (trunk.isPresent()) {
      return toRow(run.rows(), trunk.get());
    }
    List<Shape> parts = run.on().shape().parts();
    return run.rows().stream()
        .map(Line::middle)
        .map(at -> toRow(parts.stream().map(Shape::outline).toList(), at))
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

  private static Length toRow(List<Line> rows, Point at) {
    return rows.stream()
        .map(row -> row.nearest(at).distance(at))
        .min(Length::compareTo)
        .orElseThrow();
  }
}
