package yardloom.sun.neighbour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.check.Finding;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.sun.TestYards;

/** From how much lost sun on a neighbour and a bed are told: half an hour. */
class NotableSunTest {
  private static final ElementId SHED = new ElementId(ElementKind.STRUCTURE, "shed");

  private record Given(LostSun lost) implements Calculator {
    @Override
    public String id() {
      return "test.lost";
    }

    @Override
    public Set<FactKey<?>> gives() {
      return Set.of(LostSun.KEY);
    }

    @Override
    public void compute(Plan plan, Facts in, Sink out) {
      out.give(LostSun.KEY, lost);
    }
  }

  private static Plan plan() {
    Draft draft = TestYards.at(40, -105);
    TestYards.bed(draft, new ElementId(ElementKind.BED, "b"), TestYards.rectangle(0, 0, 2, 1));
    draft.add(
        SHED,
        SourceRef.NONE,
        c -> new Element.Structure(c, TestYards.rectangle(0, 2, 1, 3), Length.metres(2)));
    draft.attributes().add(ProposedWords.PROPOSED, SHED, SourceRef.NONE);
    return draft.freeze();
  }

  @ParameterizedTest
  @CsvSource({"5.5, false, true", "5.45, true, true", "5.6, false, false"})
  void lossOfHalfAnHour_isTold(double then, boolean neighbour, boolean bed) {
    Plan plan = plan();
    Element.Bed own = plan.all(Element.Bed.class).get(0);
    Results facts =
        FactGraph.of(
                List.of(
                    new Given(
                        new LostSun(
                            List.of(new LostSun.OfBed(SHED, own, 6, then)),
                            List.of(
                                new LostSun.OfNeighbour(
                                    own,
                                    Point.metres(3.048, 6.096),
                                    Length.metres(1.5),
                                    3,
                                    6,
                                    then))))))
            .run(plan);
    List<Finding> told = new NeighbourCheck().run(plan, facts);
    assertEquals(neighbour ? 1 : 0, told.size());
    assertEquals(bed ? 1 : 0, new ProposedCheck().run(plan, facts).size());
    if (neighbour) {
      assertTrue(
          told.get(0)
              .text()
              .endsWith(
                  "in April (6.0 h now, 5.5 h then, at (3.05 m (10.0 ft), 6.10 m (20.0 ft)) 1.50 m"
                      + " (4.9 ft) above ground)"),
          told.get(0).text());
    }
  }

  @Test
  void planWithoutWhatIsProposed_isSilent() {
    Plan plan = plan();
    Results none = FactGraph.of(List.<Calculator>of()).run(plan);
    assertTrue(new NeighbourCheck().run(plan, none).isEmpty());
    assertTrue(new ProposedCheck().run(plan, none).isEmpty());
  }
}
