package yardloom.water.drip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * In a bed of straight plant rows no tube lies within a hand of a plant where there is room, and
 * nothing else changes: plane geometry, with places tried millimetre by millimetre.
 */
class RowShiftLawTest {
  private static final SourceRef HERE = new SourceRef("drip.groovy", 5, 2);
  private static final ElementId BED = new ElementId(ElementKind.BED, "b");
  private static final double LONG_M = 6;

  /** Half of the 2 ft that an outlet of 0.5 gph wets in loam, and half a small pot. */
  private static final double REACH_M = (1 + 2 / 12.0) * 0.3048;

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static List<Point> plants(double width, int rows, double edge) {
    List<Point> at = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      double y = rows == 1 ? edge : edge + i * (width - 2 * edge) / (rows - 1);
      for (double x = 0.2; x < LONG_M; x += 0.35) {
        at.add(Point.metres(x, y));
      }
    }
    return at;
  }

  private static DripRun run(double width, double apart, List<Point> at) {
    return run(Shape.rectangle(Point.metres(0, 0), m(LONG_M), m(width)), apart, at);
  }

  private static DripRun run(Shape shape, double apart, List<Point> at) {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));
    BedScope bed =
        new BedScope(
            draft,
            draft.add(BED, HERE, c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL)),
            HERE);
    DripWords.drip(bed, Flow.gallonsPerHour(0.5), m(0.3), m(apart), null, null, null, null);
    Calculator stands =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(YardFacts.STANDS);
          }

          @Override
          public void compute(Plan plan, Facts in, Sink out) {
            out.give(
                YardFacts.STANDS,
                new Stand(
                    BED,
                    HERE,
                    new Stand.Kind("it", "", m(0.3)),
                    new Stand.Placed(at, Area.squareMetres(1), Optional.empty()),
                    new Stand.Thirst(
                        Collections.nCopies(12, 0.8),
                        Source.commonPractice("told"),
                        Optional.empty()),
                    Stand.Planted.THROUGH_CARDBOARD));
          }
        };
    return FactGraph.of(List.of(stands, new DripCalculator()))
        .run(draft.freeze())
        .all(DripRun.KEY)
        .get(0);
  }

  private static List<Double> across(DripRun run) {
    return run.rows().stream().map(r -> r.middle().y().metres()).distinct().sorted().toList();
  }

  private static double nearest(double y, List<Point> plants) {
    return plants.stream().mapToDouble(p -> Math.abs(p.y().metres() - y)).min().orElseThrow();
  }

  @Property(tries = 150)
  void rows_lieBesidePlants_whereThereIsRoom(
      @ForAll @DoubleRange(min = 0.5, max = 2.2) double width,
      @ForAll @DoubleRange(min = 0.25, max = 0.6) double apart,
      @ForAll @IntRange(min = 1, max = 5) int plantRows,
      @ForAll @DoubleRange(min = 0.1, max = 0.25) double edge) {
    List<Point> at = plants(width, plantRows, edge);
    List<Double> even = across(run(width, apart, List.of(Point.metres(-9, -9))));
    DripRun run = run(width, apart, at);
    List<Double> lie = across(run);
    assertEquals(even.size(), lie.size());
    assertEquals(LONG_M * lie.size(), run.totals().length().value().metres(), 1e-6);
    double farEven = far(even, at);
    boolean isHeldUp = true;
    for (int i = 0; i < lie.size(); i++) {
      double y = lie.get(i);
      assertTrue(y > 0 && y < width && Math.abs(y - even.get(i)) <= apart / 4 + 1e-6);
      if (nearest(y, at) < 0.0762 - 1e-6) {
        isHeldUp &= !room(even.get(i), apart, width, at) || farEven > REACH_M - apart / 4;
      }
    }
    double far = far(lie, at);
    assertTrue(far <= Math.max(REACH_M, farEven) + 1e-9, far + " of " + farEven);
    // Where there was room and a row stays, moving it would have left a plant dry.
    assertTrue(isHeldUp, lie + " of " + even);
  }

  /**
   * One row in the middle of 0.8 m, a plant 0.01 m below it: the nearest free place is 0.39 +
   * 0.0762 m. That is 0.3512 m from another plant at 0.115 m and 0.3662 m from one at 0.1 m, of
   * 0.3556 m that water comes to: for the second, the row stays.
   */
  @Example
  void row_stays_whereAPlantWouldBeLeftDry() {
    assertEquals(0.4662, across(run(0.8, 0.8, two(0.115))).get(0), 1e-6);
    assertEquals(0.4, across(run(0.8, 0.8, two(0.1))).get(0), 1e-6);
  }

  /**
   * The same bed 0.08 m narrower at one end: its row moves as far, and is told from a string. In
   * one that is round on one side tubes follow the outline, wherever plants stand.
   */
  @Example
  void row_movesInABedThatNarrows_notInARoundOne() {
    DripRun narrows = run(narrowing(0.8, 0.08), 0.8, two(0.115));
    assertEquals(0.4662, across(narrows).get(0), 1e-6);
    assertEquals(
        "a string along the outermost corner of the south side",
        RowShift.uneven(narrows).orElseThrow().side());
    assertEquals("the south side", RowShift.uneven(run(0.8, 0.8, two(0.115))).orElseThrow().side());
    Shape round = Shape.circle(Point.metres(3, 1), m(1));
    Point under = run(round, 0.5, List.of(Point.metres(-9, -9))).rows().get(0).start();
    assertEquals(
        run(round, 0.5, List.of(Point.metres(-9, -9))).rows(),
        run(round, 0.5, List.of(under)).rows());
  }

  private static Shape narrowing(double width, double by) {
    return Shape.polygon(
        List.of(
            Point.metres(0, 0),
            Point.metres(LONG_M, 0),
            Point.metres(LONG_M, width - by),
            Point.metres(0, width)));
  }

  /** A bed with a corner cut out of it has rows in pieces; each piece keeps its hand. */
  @Property(tries = 80)
  void rowsInOtherShapes_lieBesidePlants_whereThereIsRoom(
      @ForAll @DoubleRange(min = 1, max = 2.2) double width,
      @ForAll @DoubleRange(min = 0.3, max = 0.6) double apart,
      @ForAll @IntRange(min = 1, max = 4) int plantRows,
      @ForAll boolean cut) {
    Shape bed =
        cut
            ? Shape.polygon(
                List.of(
                    Point.metres(0, 0),
                    Point.metres(LONG_M, 0),
                    Point.metres(LONG_M, width / 2),
                    Point.metres(LONG_M - 1, width / 2),
                    Point.metres(LONG_M - 1, width),
                    Point.metres(0, width)))
            : narrowing(width, 0.3);
    List<Point> at =
        plants(width, plantRows, 0.2).stream().filter(p -> p.x().metres() < 2).toList();
    DripRun without = run(bed, apart, List.of(Point.metres(-9, -9)));
    DripRun run = run(bed, apart, at);
    assertTrue(run.rows().stream().allMatch(r -> bed.contains(r.middle())));
    double most = Math.max(REACH_M, far(across(without), at));
    List<Double> lie = across(run);
    for (double even : across(without)) {
      if (lie.contains(even) && nearest(even, at) < 0.0762 && room(even, apart, width, at)) {
        List<Double> others = new ArrayList<>(lie);
        others.remove(even);
        assertTrue(far(others, at) > most - apart / 4, even + " of " + lie);
      }
    }
  }

  private static List<Point> two(double low) {
    return List.of(Point.metres(2, 0.39), Point.metres(3, low));
  }

  private static boolean room(double row, double apart, double width, List<Point> at) {
    for (double by = -apart / 4; by <= apart / 4; by += 0.001) {
      double y = row + by;
      if (y >= 0.0772 && y <= width - 0.0772 && nearest(y, at) >= 0.0772) {
        return true;
      }
    }
    return false;
  }

  private static double far(List<Double> rows, List<Point> at) {
    return at.stream()
        .mapToDouble(
            p -> rows.stream().mapToDouble(r -> Math.abs(r - p.y().metres())).min().orElseThrow())
        .max()
        .orElseThrow();
  }
}
