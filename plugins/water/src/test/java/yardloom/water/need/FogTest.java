package yardloom.water.need;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.facts.ClimateNormals;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.RoofYard;

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

  /** In the table the fog has its own column between the rain and what of it counts. */
  @Test
  void fog_standsBehindTheRain() {
    RoofYard yard = new RoofYard();
    List<ClimateNormals.Month> months = new ArrayList<>();
    List<Length> fog = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      months.add(
          new ClimateNormals.Month(
              Length.millimetres(40 + m),
              Temperature.celsius(15),
              Optional.empty(),
              Optional.empty()));
      fog.add(Length.millimetres(3 + m));
    }
    yard.give(
        YardFacts.CLIMATE, new ClimateNormals("x", months, Source.plan("x"), Source.plan("x")));
    NeedWords.fogDrip(yard.plan(), fog, "a gauge");
    Table table = RoofYard.table(yard.outcome(), "water-by-month");
    List<String> ids = table.columns().stream().map(Column::id).toList();
    assertEquals(List.of("month", "reference-et", "rain", "fog"), ids.subList(0, 4));
    String july = RoofYard.printed(table).get(6);
    assertTrue(july.matches("Jul \\| [^|]*\\| 46(\\.0)? \\| 9(\\.0)? \\|.*"), july);
  }
}
