package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;

/**
 * Dry and thirsty plants on one valve, from plan text to the finding. Sources: crop coefficients of
 * tomatoes 1.15 and asparagus 0.95 (FAO-56 Table 12), of dry shrubs 0.30; low to 0.3, moderate 0.4
 * to 0.6, high from 0.7, and low never with high (California's model ordinance).
 */
class ValveMixByHandTest {
  private static final String YARD =
      """
      plan 'Valves', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      tap 'side tap', point(5.ft, 7.ft)
      bed('one', rect(18.ft, 18.ft, 14.ft, 6.ft), use: 'perennial') {
        drip emitter: 0.6.gph, spacing: 12.inch
        %s
      }
      """;

  private static List<Finding> mixed(String plants) {
    return Drawn.of(YARD.formatted(plants)).outcome().findings().stream()
        .filter(f -> f.rule().equals("water.valve-mix"))
        .toList();
  }

  @Test
  void dryAndThirsty_areFound_byTheirShares() {
    List<Finding> found = mixed("plant 'lavender', share: 0.4\n  plant 'tomato', share: 0.6");
    assertEquals(1, found.size());
    String text = found.get(0).text();
    assertTrue(text.contains("lavender (0.3"), text);
    assertTrue(text.contains("tomato (1.1") || text.contains("tomato (1.2"), text);
  }

  @Test
  void plantsOfLikeUse_areNot() {
    assertEquals(List.of(), mixed("plant 'asparagus', share: 0.4\n  plant 'tomato', share: 0.6"));
    assertEquals(List.of(), mixed("plant 'lavender', share: 0.4\n  plant 'rosemary', share: 0.6"));
  }

  /** In beds of their own the two differ so much in run time that each has its valve. */
  @Test
  void dryBed_hasAValveOfItsOwn() {
    String both =
        YARD.formatted("plant 'tomato'")
            + "bed('dry', rect(18.ft, 26.ft, 14.ft, 6.ft), use: 'perennial') { drip emitter:"
            + " 0.6.gph, spacing: 12.inch; plant 'lavender' }\n";
    Drawn drawn = Drawn.of(both);
    assertEquals(List.of("1", "2"), drawn.rows("zones"));
    assertTrue(
        drawn.outcome().findings().stream().noneMatch(f -> f.rule().equals("water.valve-mix")));
  }
}
