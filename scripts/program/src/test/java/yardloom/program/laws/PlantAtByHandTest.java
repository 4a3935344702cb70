package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.problem.PlanException;

/** Plants at points of the plan, to the printed count and the finding of those without room. */
class PlantAtByHandTest {
  private static final String YARD =
      """
      plan 'Points', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 40.ft), point(0.ft, 40.ft)])
      ownPlant('bush', like: 'red currant', source: publication('x', by: 'y', seen: 'read')) { grown spacing: 4.ft, rows: 4.ft, spread: 5.ft, height: 6.ft }
      bed('b', rect(10.ft, 10.ft, 20.ft, 8.ft), use: 'perennial') { plantAt 'bush', at: [%s] }
      """;

  private static Drawn drawn(String points) {
    return Drawn.of(YARD.formatted(points));
  }

  /** Half of 4 ft from the edge: (13, 13), (19, 16) and (28, 12) have 2 ft and more. */
  @Test
  void plants_standAtTheirPoints() {
    Drawn yard = drawn("point(13.ft, 13.ft), point(19.ft, 16.ft), point(28.ft, 12.ft)");
    assertEquals("3", yard.printed("planting", "b", "count"));
    List<Stand> stands = yard.outcome().results().all(YardFacts.STANDS);
    assertEquals(1, stands.size());
    assertEquals(19, stands.get(0).placed().at().get(1).x().feet(), 1e-9);
    assertEquals(16, stands.get(0).placed().at().get(1).y().feet(), 1e-9);
  }

  /** (13, 11) is a foot from the edge, (40, 13) outside: one of three is left. */
  @Test
  void pointsWithoutRoom_areLeftOut_andSaid() {
    Drawn yard = drawn("point(13.ft, 13.ft), point(13.ft, 11.ft), point(40.ft, 13.ft)");
    assertEquals("1", yard.printed("planting", "b", "count"));
    assertTrue(
        yard.outcome().findings().stream()
            .anyMatch(f -> f.text().contains("of 3 bush only 1 find room")));
  }

  @Test
  void noPoint_isRefused() {
    assertThrows(PlanException.class, () -> drawn(""));
  }
}
