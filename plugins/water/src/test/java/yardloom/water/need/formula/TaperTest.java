package yardloom.water.need.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Length;

/** The taper has every day of 45 in it, and no day twice. */
class TaperTest {
  @Test
  void steps_follow_dailyForTwoWeeks_asPublished() {
    assertEquals(1, Taper.STEPS.get(0).everyDays());
    assertEquals(14, Taper.STEPS.get(0).until());
    int next = 1;
    for (Taper.Step step : Taper.STEPS) {
      assertEquals(next, step.from());
      assertEquals(0, step.days() % step.everyDays());
      next = step.until() + 1;
    }
    assertEquals(46, next);
  }

  /** Sum of all waterings = 45 days × max(Kc, 0.7) × reference ET. */
  @Property(seed = "20261127", tries = 100)
  void waterings_bringTheUseOfAllDays(
      @ForAll @DoubleRange(min = 0.1, max = 1.3) double kc,
      @ForAll @DoubleRange(min = 0.5, max = 10) double etMm) {
    double sum = 0;
    for (Taper.Step step : Taper.STEPS) {
      sum +=
          step.waterings()
              * Taper.depth(kc, Length.millimetres(etMm), step.everyDays()).millimetres();
    }
    assertEquals(45 * Math.max(0.7, kc) * etMm, sum, 1e-9 * sum);
  }
}
