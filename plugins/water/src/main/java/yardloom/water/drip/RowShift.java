package yardloom.water.drip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Loops;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.RectangleSides;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.drip.formula.BesidePlants;
import yardloom.water.drip.formula.DripLayout;

/**
 * Leads the straight rows of a bed beside its plants, where they would lie under them: whoever lays
 * them first would have the planter's trowel, or the stems, in the tube. Rows that follow a round
 * outline stay, and the notes ask for the same by hand.
 */
final class RowShift {
  /** So far a tube is kept from stems (common practice). */
  static final Length HAND = Length.inches(3);

  static final Source RULE =
      Source.commonPractice("a row of dripline lies beside the stems, not under them");

  private static final double SAME_M = 1e-3;
  private static final double SLACK_M = 1e-9;

  private RowShift() {}

  /** How texts call the distance in a plan. */
  static String hand(Plan plan) {
    return plan.info().units() == UnitSystem.US ? "a hand (3\u00a0in)" : "a hand (75\u00a0mm)";
  }

  /**
   * The rows beside the plants.
   *
   * @param rows as they lie by the bed alone, along its long side
   * @param waters whose plants they water
   * @param feed where water comes from, if known
   */
  static List<Line> beside(
      Shape ground,
      List<Line> rows,
      DripChoice choice,
      List<ElementId> waters,
      Optional<Point> feed,
      Facts in) {
    List<Point> stems = planted(waters, in).toList();
    if (rows.isEmpty() || stems.isEmpty() || !isStraight(ground)) {
      return rows;
    }
    LongAxis axis = LongAxis.of(ground);
    double[] plants = stems.stream().mapToDouble(at -> across(axis, at)).toArray();
    double[] lie = places(axis, rows);
    double[] moved =
        BesidePlants.of(
            lie,
            choice.rowSpacing().metres(),
            axis.width().metres(),
            plants,
            HAND.metres(),
            feed.map(at -> across(axis, at)).orElse(0.0));
    double most =
        Math.max(RowPlaces.wetsBallWithin(choice, in).metres(), far(rows, stems)) + SLACK_M;
    List<List<Line>> beside = new ArrayList<>();
    for (double place : lie) {
      beside.add(
          rows.stream().filter(r -> Math.abs(across(axis, r.middle()) - place) < SAME_M).toList());
    }
    for (int i = 0; i < lie.length; i++) {
      List<Line> there = beside.get(i);
      List<Line> led = moved[i] == lie[i] ? List.of() : pieces(axis, moved[i], choice);
      if (!led.isEmpty()) {
        beside.set(i, led);
        // One row that would leave a plant dry does not hold up the others.
        if (far(beside.stream().flatMap(List::stream).toList(), stems) > most) {
          beside.set(i, there);
        }
      }
    }
    return beside.stream().flatMap(List::stream).toList();
  }

  /** What of a row across a bed lies in it, and has room for an outlet. */
  private static List<Line> pieces(LongAxis axis, double across, DripChoice choice) {
    return axis.row(Length.metres(across)).stream()
        .filter(piece -> DripLayout.outlets(piece.length(), choice.spacing()) > 0)
        .toList();
  }

  /** Where rows lie across the bed, in their order; pieces of one row count once. */
  private static double[] places(LongAxis axis, List<Line> rows) {
    List<Double> places = new ArrayList<>();
    for (Line row : rows) {
      double at = across(axis, row.middle());
      if (places.stream().noneMatch(p -> Math.abs(p - at) < SAME_M)) {
        places.add(at);
      }
    }
    return places.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double far(List<Line> rows, List<Point> stems) {
    return stems.stream().mapToDouble(at -> RowPlaces.toRow(rows, at).metres()).max().orElseThrow();
  }

  /**
   * Where rows lie from one long side of their bed, where they do not share it evenly; else empty.
   */
  static Optional<FromSide> uneven(DripRun run) {
    Shape ground = run.on().shape();
    if (!run.reachesRootBalls()
        || run.choice().isSingle()
        || run.on().contour().isPresent()
        || !isStraight(ground)) {
      return Optional.empty();
    }
    LongAxis axis = LongAxis.of(ground);
    List<Double> lie = DoubleStream.of(places(axis, run.rows())).sorted().boxed().toList();
    double spacing = run.choice().rowSpacing().metres();
    double first = (axis.width().metres() - spacing * (lie.size() - 1)) / 2;
    for (int i = 0; i < lie.size(); i++) {
      if (Math.abs(lie.get(i) - first - spacing * i) > SAME_M) {
        return Optional.of(fromSide(axis, lie, RectangleSides.of(ground).isPresent()));
      }
    }
    return Optional.empty();
  }

  /**
   * Rows of one bed, by tape from one of its sides, or from a string along its outermost corners.
   */
  record FromSide(String side, List<Length> rows) {}

  /** From the south or the west, as maps are read. */
  private static FromSide fromSide(LongAxis axis, List<Double> lie, boolean hasSides) {
    double right = StrictMath.sin(axis.bearing().radians());
    double up = StrictMath.cos(axis.bearing().radians());
    boolean isLevel = Math.abs(right) >= Math.abs(up);
    // The axis runs to the right or straight up: what is measured across begins on its right hand.
    boolean beginsThere = isLevel || up < 0;
    List<Length> rows =
        lie.stream()
            .map(Length::metres)
            .map(at -> beginsThere ? at : axis.width().minus(at))
            .sorted(Comparator.naturalOrder())
            .toList();
    String side = (isLevel ? "south" : "west") + " side";
    return new FromSide(
        hasSides ? "the " + side : "a string along the outermost corner of the " + side, rows);
  }

  /** Whether a row lies nearer to a stem than a hand all the same. */
  static boolean isUnderPlants(DripRun run, Facts facts) {
    return run.reachesRootBalls()
        && !run.choice().isSingle()
        && planted(run.on().waters(), facts)
            .anyMatch(at -> RowPlaces.toRow(run.rows(), at).metres() < HAND.metres() - SAME_M);
  }

  private static boolean isStraight(Shape ground) {
    return ground.parts().size() == 1 && !Loops.isCurved(ground);
  }

  /** Those that stand there when tube is laid: what follows them is sown beside it. */
  private static Stream<Point> planted(List<ElementId> waters, Facts in) {
    return in.all(YardFacts.STANDS).stream()
        .filter(stand -> waters.contains(stand.in()) && !stand.follows())
        .flatMap(stand -> stand.placed().at().stream());
  }

  private static double across(LongAxis axis, Point at) {
    Point from = axis.at(Length.ZERO, Length.ZERO);
    Point to = axis.at(Length.ZERO, Length.metres(1));
    return (at.x().metres() - from.x().metres()) * (to.x().metres() - from.x().metres())
        + (at.y().metres() - from.y().metres()) * (to.y().metres() - from.y().metres());
  }
}
