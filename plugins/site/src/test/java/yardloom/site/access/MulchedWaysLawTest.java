package yardloom.site.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.facts.Ways;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Route;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.unit.Length;

/** Ways over mulched ground: round the beds in it, on foot never further than with a barrow. */
class MulchedWaysLawTest {
  private static Point at(double x, double y) {
    return new Point(Length.feet(x), Length.feet(y));
  }

  /**
   * From (0, 10) to the far bed, whose corners are (40, 6) and (40, 14), past a bed from y = -20 to
   * 20 at x = 15 to 19: with a barrow 1.25 ft (15 in, half of 30) off it by (13.75, 21.25) and
   * (20.25, 21.25), to the ground 1.25 ft beyond the upper corner of the far bed, (40, 15.25).
   */
  @Test
  void bedInTheGround_isGoneRound() {
    PlanKit kit = PlanKit.us();
    kit.ground("lawn", PlanKit.box(0, -20, 60, 50));
    kit.bed("long", BedUse.PERENNIAL, PlanKit.box(15, -20, 4, 40));
    Shape goal = PlanKit.box(40, 6, 10, 8);
    kit.bed("far", BedUse.PERENNIAL, goal);
    Route way = WaysCalculator.of(kit.plan()).from(at(0, 10)).withBarrow(goal).orElseThrow();
    double legs = Math.hypot(13.75, 11.25) + 6.5 + Math.hypot(19.75, 6);
    assertEquals(legs, way.length().feet(), 0.01);
  }

  @Property(tries = 60, seed = "20261127")
  void wayOnFoot_isNoLongerThanWithABarrow(
      @ForAll @IntRange(min = 2, max = 45) int x,
      @ForAll @IntRange(min = 0, max = 25) int y,
      @ForAll @IntRange(min = 1, max = 12) int gap) {
    PlanKit kit = PlanKit.us();
    kit.ground("lawn", PlanKit.box(0, 0, 60, 40));
    kit.bed("a", BedUse.PERENNIAL, PlanKit.box(x, y, 9, 6));
    kit.bed("b", BedUse.PERENNIAL, PlanKit.box(x + 9 + gap / 2.0, y, 5, 11));
    kit.path("edge", 3, 0, -1, 60, -1);
    Ways ways = WaysCalculator.of(kit.plan());
    for (Shape goal : new Shape[] {PlanKit.box(x, y, 9, 6), PlanKit.box(50, 30, 4, 4)}) {
      Optional<Route> barrow = ways.from(at(0, -1)).withBarrow(goal);
      Optional<Route> foot = ways.from(at(0, -1)).onFoot(goal);
      assertTrue(foot.isPresent() || barrow.isEmpty());
      barrow.ifPresent(
          b -> assertTrue(foot.get().length().feet() <= b.length().feet() + 1e-6, goal::toString));
    }
  }
}
