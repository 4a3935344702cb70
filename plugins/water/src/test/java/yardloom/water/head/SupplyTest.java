package yardloom.water.head;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.UnitSystem;
import yardloom.kernel.unit.Volume;

/** What zones may take of what the tap gives. */
class SupplyTest {
  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));

  /** 11 L in 33 s are 1,200 L/h; three quarters of them are 900. */
  @Test
  void bucket_leavesAQuarter() {
    HeadWords.bucketTest(
        new PlanScope(draft, new SourceRef("tap.groovy", 2, 1)), Volume.litres(11), 33);
    assertEquals(900, Supply.limit(draft.freeze()).value().litresPerHour(), 1e-6);
  }

  /** Where nobody measured, a half-inch line: 200 gph. */
  @Test
  void nothingSaid_isAHalfInchLine() {
    assertEquals(200, Supply.limit(draft.freeze()).value().gallonsPerHour(), 1e-6);
  }
}
