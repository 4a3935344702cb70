package yardloom.site.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableMaker;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.site.SitePlugin;
import yardloom.site.lot.LotWords;
import yardloom.site.setback.SideWords;

class SurveyWordsTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 5, 1));

  private static Length ft(double v) {
    return Length.feet(v);
  }

  private static Point p(double xFt, double yFt) {
    return new Point(ft(xFt), ft(yFt));
  }

  private Deed deed(String table) {
    return DeedWords.deed(
        in, "Lot 7", null, null, null, null, null, null, s -> DeedWords.calls(s, table, null));
  }

  private List<Finding> findings(String rule) {
    Plan plan = draft.freeze();
    java.util.ArrayList<Finding> all = new java.util.ArrayList<>();
    for (Check check : new SitePlugin().checks()) {
      all.addAll(check.run(plan, FactGraph.of(new SitePlugin().calculators()).run(plan)));
    }
    return all.stream().filter(f -> f.rule().equals(rule)).toList();
  }

  private Table table(String id) {
    Plan plan = draft.freeze();
    TableMaker maker =
        new SitePlugin().tables().stream().filter(t -> t.id().equals(id)).findFirst().get();
    return maker.make(plan, FactGraph.of(new SitePlugin().calculators()).run(plan));
  }

  private Point tied(double blunderFt, int tapes) {
    Point truth = p(42, 12);
    Point[] from = {p(0, 0), p(60, 0), p(60, 40), p(0, 40), p(30, 50)};
    return SurveyWords.tied(
        in,
        "corner",
        truth,
        s -> {
          for (int i = 0; i < tapes; i++) {
            Length d = from[i].distance(truth).plus(i == 2 ? ft(blunderFt) : Length.ZERO);
            SurveyWords.tape(s, from[i], d, "stake " + (i + 1), null);
          }
        });
  }

  @Test
  void tied_exactTapes_isTheTruthWithoutFindings() {
    Point at = tied(0, 5);
    assertEquals(42, at.x().feet(), 1e-6);
    assertEquals(12, at.y().feet(), 1e-6);
    assertTrue(findings("site.tie-residual").isEmpty());
    assertTrue(findings("site.tie-unchecked").isEmpty());
    assertEquals(5, table("ties").rows().size());
  }

  @Test
  void tied_oneFootBlunder_isNamed() {
    tied(1, 5);
    String text = findings("site.tie-residual").get(0).text();
    assertTrue(text.contains("the tape from stake 3"), text);
    assertTrue(text.contains("is the likeliest to be wrong"), text);
  }

  @Test
  void tied_oneFootBlunderWithOneTapeToSpare_cannotBeNamed() {
    tied(1, 3);
    String text = findings("site.tie-residual").get(0).text();
    assertTrue(text.contains("nobody can tell which is wrong"), text);
  }

  @Test
  void tied_twoTapes_areNotedAsUnchecked() {
    tied(0, 2);
    assertEquals(
        "the point 'corner' rests on two tapes; nothing checks them",
        findings("site.tie-unchecked").get(0).text());
  }

  @Test
  void tied_noTapes_isRefusedAtItsLine() {
    PlanException e =
        assertThrows(PlanException.class, () -> SurveyWords.tied(in, "corner", null, null));
    assertEquals(5, e.problems().get(0).place().line());
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
  }

  @Test
  void lotFrom_clockwiseDeedWithCurve_keepsNamesRolesAndTheArc() {
    Deed parcel =
        deed(
            """
            bearing,distance,radius,delta,chord bearing,turn,name
            North,100 ft,,,,,west
            East,80 ft,,,,,north
            South,80 ft,,,,,east
            ,,20 ft,90-00-00,S 45 W,right,corner
            West,60 ft,,,,,front
            """);
    Handle lot =
        LotWords.lotFrom(
            in,
            parcel,
            s -> SideWords.side(s, "corner", "corner side", ft(10), "code", null, null, null));
    double quarter = 20 * 20 * (1 - Math.PI / 4);
    assertEquals(8000 - quarter, lot.getShape().area().squareFeet(), 0.5);
    Lot.Edge corner =
        draft.lot().get().edges().stream().filter(e -> e.name().equals("corner")).findAny().get();
    assertEquals(20, corner.arc().get().radius().feet(), 1e-6);
    assertEquals(Math.PI * 10, corner.arc().get().length().feet(), 1e-6);
    List<Lot.Edge> edges = draft.lot().get().edges();
    for (int i = 0; i < 5; i++) {
      assertEquals(edges.get(i).line().end(), edges.get((i + 1) % 5).line().start());
    }
    // The setback of a convex arc is the concentric arc of radius 10.
    Shape free = draft.lot().get().insideSetbacks();
    assertEquals(10, p(60, 20).distance(nearest(free)).feet(), 0.02);
  }

  /** The corner of {@code free} furthest down the diagonal from the curve's centre. */
  private static Point nearest(Shape free) {
    return free.corners().stream()
        .max(java.util.Comparator.comparingDouble(c -> c.x().feet() - c.y().feet()))
        .orElseThrow();
  }

  @Test
  void deed_misclosure_isAWarningWithBothAreas() {
    deed(
        """
        bearing,distance
        N 26-10 E,285.10 ft
        S 75-25 E,610.45 ft
        S 15-30 W,720.48 ft
        N 1-42 W,203.00 ft
        N 53-06 W,647.02 ft
        """);
    String text = findings("site.deed-misclosure").get(0).text();
    assertTrue(text.startsWith("the description fails to close by 0.88 ft, 1 : 2792"), text);
    assertTrue(text.contains("272611.2 sq ft adjusted"), text);
    assertEquals(5, table("deed").rows().size());
  }

  @Test
  void deed_magneticWithoutDeclination_isRefused() {
    PlanException e =
        assertThrows(
            PlanException.class,
            () -> DeedWords.deed(in, "L", null, "magnetic", null, null, null, null, null));
    assertEquals(ProblemCode.MISSING_OPTION, e.problems().get(0).code());
  }

  @Test
  void deed_magneticWithEastDeclination_turnsClockwise() {
    Deed parcel =
        DeedWords.deed(
            in,
            "L",
            null,
            "magnetic",
            Angle.degrees(15),
            null,
            null,
            null,
            s -> {
              DeedWords.course(s, "North", ft(100), null);
              DeedWords.course(s, "East", ft(100), null);
              DeedWords.toStart(s, null);
            });
    assertEquals(15, parcel.calls().get(0).chord().azimuth().degrees(), 1e-9);
  }

  @Test
  void offsetFrom_leftAndRight_contradict() {
    assertEquals(p(30, -6.5), SurveyWords.offsetFrom(in, p(0, 0), p(60, 0), ft(30), null, ft(6.5)));
    assertThrows(
        PlanException.class,
        () -> SurveyWords.offsetFrom(in, p(0, 0), p(60, 0), ft(30), ft(1), ft(1)));
  }
}
