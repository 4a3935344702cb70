package yardloom.water.drip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.lot.LotWords;

/** Where dripline and headers lie. Source: plane geometry, worked beside each value. */
class DripLawsTest {
  private static final SourceRef HERE = new SourceRef("drip.groovy", 7, 3);

  private final Draft draft = draft();

  private static Draft draft() {
    return new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));
  }

  private static BedScope bed(Draft draft, String name, Shape shape) {
    ElementId id = new ElementId(ElementKind.BED, name);
    return new BedScope(
        draft, draft.add(id, HERE, c -> new Element.Bed(c, shape, Element.BedUse.PERENNIAL)), HERE);
  }

  private TreeScope tree(String name, double xM, double crownM, double trunkM) {
    Point at = Point.metres(xM, 5);
    ElementId id = new ElementId(ElementKind.TREE, name);
    return new TreeScope(
        draft,
        draft.add(
            id,
            HERE,
            c ->
                new Element.Tree(
                    c,
                    at,
                    Shape.circle(at, m(crownM / 2)),
                    m(crownM),
                    m(4),
                    m(1),
                    m(trunkM),
                    Element.Leaf.DECIDUOUS)),
        HERE);
  }

  private static Length m(double metres) {
    return Length.metres(metres);
  }

  private static Shape box(double x, double y, double w, double d) {
    return Shape.rectangle(Point.metres(x, y), m(w), m(d));
  }

  private void drip(BedScope bed, double spacingM, double rowM) {
    DripWords.drip(bed, Flow.litresPerHour(2), m(spacingM), m(rowM), null, null, null, null);
  }

  private List<DripRun> runs() {
    Results results = FactGraph.of(List.of(new DripCalculator())).run(draft.freeze());
    return results.all(DripRun.KEY);
  }

  /** Round, ring, keyhole, L, U, triangle, bent strip, two parts. */
  private static Shape bed(int form, double r) {
    Point middle = Point.metres(0, 0);
    return switch (form) {
      case 0 -> Shape.circle(middle, m(r));
      case 1 -> Shape.circle(middle, m(r)).minus(Shape.circle(middle, m(r * 0.45)));
      case 2 -> Shape.circle(middle, m(r)).minus(box(-0.2, -2 * r, 0.4, 2 * r));
      case 3 -> box(-r, -r, 2 * r, 2 * r).minus(box(0, 0, r, r));
      case 4 -> box(-r, -r, 2 * r, 2 * r).minus(box(-r / 3, 0, r / 1.5, r));
      case 5 ->
          Shape.polygon(List.of(Point.metres(-r, -r), Point.metres(r, -r), Point.metres(r / 2, r)));
      case 6 ->
          Line.through(
                  IntStream.rangeClosed(0, 20)
                      .mapToObj(
                          i ->
                              Point.metres(
                                  3 * r * Math.cos(i * Math.PI / 20),
                                  3 * r * Math.sin(i * Math.PI / 20)))
                      .toList())
              .strip(m(r));
      default -> box(-r, -r, 0.9 * r, 2 * r).plus(box(0.3 * r, -r, 0.7 * r, r));
    };
  }

  @Property(tries = 120)
  void everyMetreOfTube_liesInItsBedAndTheLot(
      @ForAll @IntRange(min = 0, max = 7) int form,
      @ForAll @DoubleRange(min = 0.5, max = 3) double r,
      @ForAll @DoubleRange(min = 0.15, max = 0.6) double rowM,
      @ForAll @DoubleRange(min = -90, max = 90) double turn,
      @ForAll boolean beyondTheLot) {
    Draft draft = draft();
    Shape bed = bed(form, r).turned(Angle.degrees(turn), Point.metres(0, 0));
    // Half of the beds reach over the lot line.
    Shape lot = beyondTheLot ? box(-20, -20, 40, 20.1) : box(-20, -20, 40, 40);
    LotWords.lot(new PlanScope(draft, HERE), lot.corners(), null);
    DripWords.drip(
        bed(draft, "b", bed), Flow.litresPerHour(2), m(0.3), m(rowM), null, null, null, null);
    Results results = FactGraph.of(List.of(new DripCalculator())).run(draft.freeze());
    Shape allowed = bed.and(lot).grown(Length.millimetres(2));
    for (DripRun run : results.all(DripRun.KEY)) {
      double rows = 0;
      for (Line row : run.rows()) {
        assertTrue(allowed.jts().covers(row.jts()), "row " + row);
        rows += row.length().metres();
      }
      double headers = 0;
      for (Line header : run.headers()) {
        assertTrue(allowed.jts().covers(header.jts()), "header " + header);
        headers += header.length().metres();
      }
      assertEquals(rows, run.totals().length().value().metres(), 1e-9);
      assertEquals(headers, run.totals().header().value().metres(), 1e-9);
    }
  }

  /**
   * A ring of 1 and 2.2 m, rows every 0.4 m: 1.2 / 0.4 = 3 circles at 2.0, 1.6 and 1.2 m, 2π × 4.8
   * = 30.16 m; joined over 2 × 0.4 m; outlets every 0.3 m: 41.9, 33.5 and 25.1, half ones up: 42 +
   * 34 + 25 = 101.
   */
  @Test
  void ring_rowsAreCircles() {
    Point middle = Point.metres(5, 5);
    Shape ring = Shape.circle(middle, m(2.2)).minus(Shape.circle(middle, m(1)));
    drip(bed(draft, "ring", ring), 0.3, 0.4);
    DripRun run = runs().get(0);
    assertEquals(3, run.rows().size());
    assertEquals(30.16, run.totals().length().value().metres(), 0.03);
    assertEquals(0.8, run.totals().header().value().metres(), 0.01);
    assertEquals(101, run.totals().outlets().value());
    assertTrue(run.rows().stream().allMatch(Line::isClosed));
  }

  /**
   * A tree within a ring bed is watered by the bed's dripline; one beside it or with its own not.
   */
  @Test
  void treeInARing_isWateredByTheRing() {
    Point middle = Point.metres(5, 5);
    Shape ring = Shape.circle(middle, m(2.2)).minus(Shape.circle(middle, m(1)));
    drip(bed(draft, "ring", ring), 0.3, 0.4);
    tree("inside", 5, 4, 0.02);
    tree("beside", 20, 4, 0.02);
    DripWords.drip(
        tree("own", 5.5, 3, 0.04), Flow.litresPerHour(3), m(0.3), m(0.6), null, null, null, null);
    List<DripRun> runs = runs();
    assertEquals(
        List.of(new ElementId(ElementKind.TREE, "own"), new ElementId(ElementKind.BED, "ring")),
        runs.stream().map(DripRun::bed).toList());
    assertEquals(
        List.of(new ElementId(ElementKind.BED, "ring"), new ElementId(ElementKind.TREE, "inside")),
        runs.get(1).on().waters());
    // 1.5 m of crown less 0.02 + 0.3048 m about the stem: two rings, 1.1752 / 4 and 3 / 4 of it in.
    DripRun own = runs.get(0);
    assertEquals(2, own.rows().size());
    double byHand = 2 * Math.PI * ((1.5 - 1.1752 / 4) + (1.5 - 3 * 1.1752 / 4));
    assertEquals(byHand, own.totals().length().value().metres(), 0.02);
  }
}
