package yardloom.materials.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.work.WorkTask;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.unit.Length;

/** The edge that is cut between mulch and lawn, from the plan to the job, by hand in feet. */
class LawnEdgeTest {
  private static double edgeFt(PlanKit kit) {
    return PlanKit.run(kit.plan()).all(YardFacts.JOBS).stream()
        .filter(job -> job.task() == WorkTask.CUT_EDGE)
        .mapToDouble(job -> ((Length) job.amount().value()).feet())
        .sum();
  }

  /** Less than 30 cm, 0.984 ft, is trimmed in passing: 2 × (0.2 + 0.29) = 0.98 ft, not 0.99. */
  @ParameterizedTest
  @CsvSource({"0.29, 0", "0.295, 0.99", "0.4, 1.2"})
  void edgeOfAnArmsLength_isNoWork(double depth, double edge) {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 0.2, depth));
    assertEquals(edge, edgeFt(kit), 1e-6);
  }

  /** Beds of 10 by 4 and 10 by 3 ft side by side: 2 × (10 + 7) ft, not the seam between them. */
  @Test
  void bedsThatMeet_haveOneEdgeRoundBoth() {
    PlanKit kit = PlanKit.us();
    kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 10, 4));
    kit.bed("b", BedUse.ANNUAL, PlanKit.box(0, 4, 10, 3));
    assertEquals(34, edgeFt(kit), 0.02);
  }
}
