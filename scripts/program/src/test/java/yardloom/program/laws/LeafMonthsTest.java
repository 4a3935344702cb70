package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.facts.Obstacle;
import yardloom.facts.YardFacts;

/** What passes through new shrubs, as the notes of the planting room say it (from memory). */
class LeafMonthsTest {
  private static final String YARD =
      """
      plan 'Leaf', units: 'metric'
      site 'place', latitude: %s.deg, longitude: -92.4.deg, zone: 'Etc/GMT+6'
      lot([point(0.m, 0.m), point(17.m, 0.m), point(17.m, 25.m), point(0.m, 25.m)])
      bed('bed', rect(6.m, 4.m, 5.m, 12.m), use: 'perennial') { plant 'American elderberry' }
      """;

  private static List<Double> passes(String latitude) {
    List<Obstacle> shrubs =
        Drawn.of(YARD.formatted(latitude)).outcome().results().all(YardFacts.OBSTACLES);
    assertFalse(shrubs.isEmpty());
    return shrubs.get(0).passes().stream().map(p -> Math.round(p * 1e9) / 1e9).toList();
  }

  /** 0.3 in leaf, May to October; 0.7 without leaves. */
  @Test
  void deciduousShrub_northern_isBareFromNovemberToApril() {
    assertEquals(
        List.of(0.7, 0.7, 0.7, 0.7, 0.3, 0.3, 0.3, 0.3, 0.3, 0.3, 0.7, 0.7), passes("43.3"));
  }

  /** In the south half a year later: November to April. */
  @Test
  void deciduousShrub_southern_isBareFromMayToOctober() {
    assertEquals(
        List.of(0.3, 0.3, 0.3, 0.3, 0.7, 0.7, 0.7, 0.7, 0.7, 0.7, 0.3, 0.3), passes("-41.2"));
  }
}
