package yardloom.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.sun.light.LightWords;
import yardloom.sun.obstacle.CrownWords;
import yardloom.sun.position.Dates;
import yardloom.sun.spot.SpotWords;
import yardloom.sun.yard.SunSettings;
import yardloom.sun.yard.YardWords;

class SunWordsTest {
  private static final SourceRef PLACE = new SourceRef("plan.groovy", 4, 1);
  private final Draft draft = TestYards.at(40, -105);
  private final PlanScope plan = new PlanScope(draft, PLACE);

  private static void refused(ProblemCode code, String part, Runnable word) {
    PlanException e = assertThrows(PlanException.class, word::run);
    assertEquals(code, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  @Test
  void valuesOutsideTheirRange_areRefusedWithTheRange() {
    refused(
        ProblemCode.OUT_OF_RANGE, "0.05 m", () -> YardWords.sunGrid(plan, Length.millimetres(1)));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "below 360°",
        () -> YardWords.skyline(plan, Angle.degrees(400), Angle.degrees(5)));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "-10° to 80°",
        () -> YardWords.skyline(plan, Angle.degrees(40), Angle.degrees(95)));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "0 to 1 times",
        () -> YardWords.groundFall(plan, Length.feet(3), Length.ZERO, Angle.ZERO));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "more than zero",
        () -> SpotWords.bestSpot(plan, Area.ZERO, null, null));
    refused(
        ProblemCode.OUT_OF_RANGE,
        "at most 24",
        () -> SpotWords.bestSpot(plan, Area.squareFeet(200), null, 30));
  }

  @Test
  void dates_areReadAsMonthAndDay() {
    YardWords.sunSeason(plan, "10-15", "03-31");
    assertEquals(
        new Dates(MonthDay.of(10, 15), MonthDay.of(3, 31)),
        SunSettings.of(draft.freeze()).season());
    refused(
        ProblemCode.WRONG_TYPE, "such as '04-15'", () -> YardWords.sunSeason(plan, "April", "5-1"));
  }

  @Test
  void unknownScheme_isRefused() {
    refused(
        ProblemCode.UNKNOWN_WORD,
        "there are",
        () -> LightWords.lightScheme(plan, "tropic", null, null));
  }

  /** In leaf from 16 April: half of April's days bare, half in leaf. */
  @Test
  void leafDates_decideWhatPassesACrown() {
    ElementDraft tree =
        draft.add(
            new ElementId(ElementKind.TREE, "maple"),
            PLACE,
            c ->
                new Element.Tree(
                    c,
                    Point.metres(0, 0),
                    Shape.circle(Point.metres(0, 0), Length.metres(3)),
                    Length.metres(6),
                    Length.metres(9),
                    Length.metres(2),
                    Length.ZERO,
                    Element.Leaf.DECIDUOUS));
    TreeScope scope = new TreeScope(draft, tree, PLACE);
    CrownWords.leafOn(scope, "04-16", "10-31");
    CrownWords.crown(scope, 0.1, 0.5, "cylinder");
    List<Obstacle> found = SunPluginTest.outcome(draft).results().all(YardFacts.OBSTACLES);
    assertEquals(1, found.size());
    assertEquals(Obstacle.Form.CYLINDER, found.get(0).form());
    assertEquals(0.5, found.get(0).passes().get(0), 1e-12, "January");
    assertEquals(0.3, found.get(0).passes().get(3), 1e-12, "April");
    assertEquals(0.1, found.get(0).passes().get(6), 1e-12, "July");
    assertEquals(0.5, found.get(0).passes().get(10), 1e-12, "November");
    refused(
        ProblemCode.OUT_OF_RANGE, "share from 0", () -> CrownWords.crown(scope, 1.5, null, null));
  }
}
