package yardloom.water.need;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Fog that drips, from its word to what counts in a month. */
class FogTest {
  private static final SourceRef HERE = new SourceRef("fog.groovy", 4, 1);

  private final Draft draft =
      new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));

  private void said(List<?> months) {
    NeedWords.fogDrip(new PlanScope(draft, HERE), months, "a gauge");
  }

  /** 17 mm of rain count in July, and all 11 of fog: 28. August keeps its rain. */
  @Test
  void fog_isAddedToItsOwnMonth() {
    List<Length> months = new ArrayList<>(Collections.nCopies(12, Length.ZERO));
    months.set(6, Length.millimetres(11));
    said(months);
    Entry<Fog> fog = Fog.of(draft.freeze()).orElseThrow();
    Derived<Length> rain =
        Derived.by("told", Source.commonPractice("told")).gives(Length.millimetres(17));
    assertEquals(28, Fog.with(fog, 6, rain).value().millimetres(), 1e-9);
    assertEquals(17, Fog.with(fog, 7, rain).value().millimetres(), 1e-9);
  }

  @Test
  void fog_hasTwelveDepths_upTo300() {
    for (List<?> wrong :
        List.of(
            Collections.nCopies(11, Length.ZERO),
            Collections.nCopies(12, Length.millimetres(301)),
            Collections.nCopies(12, 5))) {
      PlanException e = assertThrows(PlanException.class, () -> said(wrong));
      assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    }
    said(Collections.nCopies(12, Length.millimetres(300)));
    assertEquals(
        ProblemCode.DUPLICATE,
        assertThrows(PlanException.class, () -> said(Collections.nCopies(12, Length.ZERO)))
            .problems()
            .get(0)
            .code());
  }
}
