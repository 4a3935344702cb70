package yardloom.site.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Trunks above 4 in are not planted by hand (common practice, no source). */
class TreeStandingTest {
  private final Draft draft = new Draft(new PlanInfo("t", "", "", "", "", "", UnitSystem.US, "$"));
  private final PlanScope in = new PlanScope(draft, new SourceRef("t.groovy", 7, 3));

  private Element.Tree tree(Length trunk, Boolean standing) {
    TreeWords.tree(
        in,
        "oak",
        Point.metres(5, 5),
        Length.feet(20),
        Length.feet(25),
        null,
        trunk,
        null,
        standing,
        null);
    return draft.freeze().all(Element.Tree.class).get(0);
  }

  @ParameterizedTest
  @CsvSource({"3.9, false", "4.0, false", "4.1, true", "12, true"})
  void nothingSaid_theTrunkTells(double trunkIn, boolean stands) {
    Element.Tree tree = tree(Length.inches(trunkIn), null);
    assertEquals(stands, tree.stands());
    assertEquals(false, tree.standing().said());
  }

  @ParameterizedTest
  @CsvSource({"2, true", "30, false"})
  void whatIsSaid_goesBeforeTheTrunk(double trunkIn, boolean said) {
    Element.Tree tree = tree(Length.inches(trunkIn), said);
    assertEquals(said, tree.stands());
    assertEquals(true, tree.standing().said());
  }

  @Test
  void trunkNotMeasured_isNew() {
    assertEquals(false, tree(null, null).stands());
  }
}
