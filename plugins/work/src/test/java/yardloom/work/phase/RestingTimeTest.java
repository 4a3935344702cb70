package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.facts.Stand;
import yardloom.kernel.fact.Results;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.work.labour.WorkWords;

class RestingTimeTest {
  @Test
  void annualBeds_plantedSoonAfterCardboard_areNoted() {
    PlanKit kit = PlanKit.us();
    kit.bed("roots", BedUse.ANNUAL, PlanKit.box(0, 0, 27, 12));
    WorkWords.work(kit.words(), 3, 6, null, "2026-05-04", "04-20", "10-20", null);
    Plan plan = kit.plan();
    Results r = PlanKit.run(plan, stand("roots", 20));
    assertTrue(
        PlanKit.findings(plan, r).stream().anyMatch(f -> f.rule().equals("work.resting-time")));
  }

  private static Stand stand(String bed, int plants) {
    return new Stand(
        new ElementId(ElementKind.BED, bed),
        SourceRef.NONE,
        new Stand.Kind("plant", "Planta", Length.feet(1)),
        new Stand.Placed(
            java.util.Collections.nCopies(plants, Point.metres(0, 0)),
            Area.ZERO,
            java.util.Optional.empty()),
        new Stand.Thirst(
            java.util.Collections.nCopies(12, 1.0),
            Source.plan("test"),
            java.util.Optional.empty()),
        Stand.Planted.THROUGH_CARDBOARD);
  }
}
