package yardloom.materials.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.work.PlantedLater;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.plan.Plan;

/** When chips are laid where kinds are planted in another season. */
class LaterChipsTest {
  private static final ElementId WAITS = new ElementId(ElementKind.BED, "waits");

  private static Facts facts(Plan plan) {
    Calculator told =
        new Calculator() {
          @Override
          public String id() {
            return "told";
          }

          @Override
          public Set<FactKey<?>> gives() {
            return Set.of(YardFacts.PLANTED_LATER);
          }

          @Override
          public void compute(Plan of, Facts in, Sink out) {
            out.give(YardFacts.PLANTED_LATER, new PlantedLater(WAITS, List.of("garlic")));
          }
        };
    return FactGraph.of(List.of(told, new SurfaceCalculator())).run(plan);
  }

  private static List<WorkPhase> chips(String place, Facts facts) {
    return facts.all(YardFacts.SURFACES).stream()
        .filter(s -> s.of().name().equals(place))
        .flatMap(s -> s.courses().stream())
        .filter(c -> c.material().equals(Material.WOOD_CHIPS))
        .map(LaidLayer::phase)
        .toList();
  }

  /** Its last mulch follows its plants; beds beside it, and paths, do not wait for it. */
  @Test
  void chipsOfThatBed_comeLater_othersDoNotWait() {
    PlanKit kit = PlanKit.us();
    kit.bed("waits", BedUse.PERENNIAL, PlanKit.box(0, 0, 13, 7));
    kit.bed("ready", BedUse.PERENNIAL, PlanKit.box(0, 20, 11, 5));
    kit.path("way", PlanKit.box(30, 0, 3, 17));
    Facts facts = facts(kit.plan());
    assertEquals(List.of(WorkPhase.LATER), chips("waits", facts));
    assertEquals(List.of(WorkPhase.FINISH), chips("ready", facts));
    assertEquals(List.of(WorkPhase.SHEET), chips("way", facts));
  }
}
