package yardloom.work.client;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.facts.mulch.MulchTotals;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Volume;

class GroundInWordsTest {
  private static <T> Derived<T> given(T value) {
    return Derived.given(value, "test", SourceRef.NONE);
  }

  /** Nobody tells a client of 0 cu yd of anything. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "35.3 | 1.5 | Cardboard, compost and wood chips over 700 sq ft of ground: 35.3 cu yd of"
            + " chips and 1.5 cu yd of compost in place.",
        "35.3 | 0 | Cardboard and wood chips over 700 sq ft of ground: 35.3 cu yd of chips in"
            + " place.",
        "0 | 1.5 | Cardboard and compost over 700 sq ft of ground: 1.5 cu yd of compost in place.",
        "0 | 0 | Cardboard over 700 sq ft of ground."
      })
  void ground_namesOnlyWhatIsLaid(double chips, double compost, String said) {
    Plan plan = PlanKit.us().plan();
    MulchTotals totals =
        new MulchTotals(
            given(Area.squareFeet(700)),
            given(Area.squareFeet(600)),
            given(Area.squareFeet(700)),
            given(90),
            given(Volume.cubicYards(compost)),
            given(Volume.cubicYards(chips)),
            List.of());
    assertEquals(said, GroundInWords.text(plan, totals).replace('\u00a0', ' '));
  }
}
