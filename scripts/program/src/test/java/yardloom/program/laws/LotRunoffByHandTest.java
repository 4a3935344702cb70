package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What sheds a storm, from plan text to the table: eaves with the roofs, all that is mulched. */
class LotRunoffByHandTest {
  private static final String YARD =
      """
      plan 'Runoff', units: 'metric'
      lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 19.m), point(0.m, 19.m)])
      soilTexture 'sandy loam', organic: 3
      building 'barn', rect(2.m, 2.m, 8.m, 5.m), eaves: 3.m
      roof 'barn roof', rect(1.5.m, 1.m, 9.m, 7.m), surface: 'metal'
      path 'walk', line([point(14.m, 1.m), point(14.m, 8.m)]), width: 1.m
      mulchedGround 'turned lawn', rect(2.m, 11.m, 10.m, 4.m)
      bed 'berries', rect(3.m, 12.m, 6.m, 1.m), use: 'perennial'
      basin('hollow', rect(14.m, 12.m, 4.m, 5.m), drains: 'barn roof', depth: 15.cm, storm: 40.mm)
      """;

  /**
   * Roofs 9 × 7 = 63 m², over the barn's 40; walk 1 × 7 and turned lawn 10 × 4 with the bed in it,
   * 47 m²; lawn 380 − 63 = 317 before, 317 − 47 = 270 after. CN 98 sheds 34.39 mm of the 40, as in
   * RoofWaterYardTest: 63 m² give 2,167 L.
   */
  @ParameterizedTest(name = "{0}: {1} m² before, {2} after")
  @CsvSource({
    "roofs, 63, 63",
    "'beds, paths and ground under mulch', 0, 47",
    "lawn, 317, 270",
  })
  void ground_isCountedOnce(String ground, double before, double after) {
    Drawn drawn = Drawn.of(YARD);
    assertEquals(before, drawn.exact("lot-runoff", ground, "before"), 1e-6);
    assertEquals(after, drawn.exact("lot-runoff", ground, "after"), 1e-6);
    assertEquals(2.167, drawn.exact("lot-runoff", "roofs", "runoff-after"), 1e-3);
  }
}
