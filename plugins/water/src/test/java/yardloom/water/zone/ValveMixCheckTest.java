package yardloom.water.zone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.drip.DripCalculator;
import yardloom.water.drip.DripWords;
import yardloom.water.drip.RouteCalculator;

/** Use by plant factor: low to 0.3, moderate 0.4 to 0.6, high from 0.7 (model ordinance). */
class ValveMixCheckTest {
  private static final SourceRef HERE = new SourceRef("valve.groovy", 4, 2);
  private static final Source SAYS = Source.commonPractice("told by the test");
  private static final ElementId BED = new ElementId(ElementKind.BED, "mixed");

  private static Stand stand(String plant, double kc) {
    return new Stand(
        BED,
        HERE,
        new Stand.Kind(plant, "", Length.metres(1)),
        new Stand.Placed(List.of(Point.metres(3, 2.2)), Area.squareMetres(1.1), Optional.empty()),
        new Stand.Thirst(Collections.nCopies(12, kc), SAYS, Optional.empty()),
        Stand.Planted.THROUGH_CARDBOARD);
  }

  /** Low with high is found, moderate with either is not, and what does not grow counts nothing. */
  @ParameterizedTest
  @CsvSource({
    "0.3, 1.05, 1",
    "0.3, 0.7, 1",
    "0.39, 0.71, 1",
    "0.3, 0.6, 0",
    "0.3, 0.69, 0",
    "0.4, 1.05, 0",
    "0, 1.05, 0",
    "0.2, 0.3, 0",
    "0.9, 1.1, 0"
  })
  void lowAndHighUse_onOneValve_areFound(double one, double other, int found) {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.METRIC, "EUR"));
    draft.add(
        new ElementId(ElementKind.WATER_POINT, "tap"),
        HERE,
        c -> new Element.WaterPoint(c, Point.metres(0, 0), "mains"));
    Shape ground = Shape.rectangle(Point.metres(2, 2), Length.metres(6), Length.metres(0.8));
    DripWords.drip(
        new BedScope(
            draft,
            draft.add(BED, HERE, c -> new Element.Bed(c, ground, Element.BedUse.PERENNIAL)),
            HERE),
        Flow.litresPerHour(2),
        Length.metres(0.3),
        Length.metres(0.4),
        null,
        null,
        null,
        null);
    Calculator told =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(YardFacts.STANDS);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            out.give(YardFacts.STANDS, stand("sage", one));
            out.give(YardFacts.STANDS, stand("kale", other));
          }
        };
    Plan plan = draft.freeze();
    Facts facts =
        FactGraph.of(
                List.of(told, new RouteCalculator(), new DripCalculator(), new ZoneCalculator()))
            .run(plan);
    assertEquals(found, new ValveMixCheck().run(plan, facts).size());
  }
}
