package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;

class PhaseNeedsTest {
  private static BillLine pieces(String item, WorkPhase phase) {
    Derived<Integer> two = Derived.given(2, item, SourceRef.NONE);
    return new BillLine(
        BillGroup.IRRIGATION, phase, item, Optional.empty(), Optional.empty(), two, two, "");
  }

  private static List<String> neededIn(WorkPhase phase) {
    return PhaseData.phases().stream()
        .filter(p -> p.id() == phase)
        .map(p -> new PhaseTime(p, 0, 1, 0, Optional.empty(), Optional.empty(), ""))
        .flatMap(
            t ->
                PhaseOrders.neededIn(
                    t,
                    List.of(),
                    List.of(pieces("filter", WorkPhase.HEAD), pieces("flush caps", WorkPhase.DRIP)))
                    .stream())
        .map(BillLine::item)
        .toList();
  }

  @Test
  void flushCaps_goWithTheDrip_andTheFilterWithTheHead() {
    assertEquals(List.of("filter"), neededIn(WorkPhase.HEAD));
    assertEquals(List.of("flush caps"), neededIn(WorkPhase.DRIP));
  }
}
