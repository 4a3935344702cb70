package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Days that a rain waters a zone, from plan text to the page beside the timer, by hand. */
class RainOffByHandTest {
  private static final String YARD =
      """
      plan 'Rain', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      soilTexture 'silt loam', organic: 3
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      tap 'side tap', point(5.ft, 7.ft)
      frost last: '04-25', first: '10-14', source: 'by hand'
      bed('greens', rect(18.ft, 18.ft, 14.ft, 6.ft), use: 'annual') {
        drip emitter: 0.6.gph, spacing: 12.inch, rowSpacing: 18.inch
        plant 'tomato'
      }
      """;

  /**
   * Tomatoes in August: Kc 1.15 (FAO-56 Table 12, mid season). Of the month's P mm 1 − 0.2 P / 125
   * is of use (CROPWAT, USDA SCS), so of half an inch 12.7 mm × that, over 1.15 × ET / 31 a day. An
   * inch lasts twice as long, since 2 ft of silt loam (0.2, NRCS) at 0.4 (FAO-56 Table 22) hold
   * more.
   */
  @Test
  void rain_lastsByTheMonthsUseAndShare() {
    Drawn drawn = Drawn.of(YARD);
    double et = drawn.exact("water-by-month", "Aug", "reference-et") * 1000;
    double rain = drawn.exact("water-by-month", "Aug", "rain") * 1000;
    double days = 12.7 * (1 - 0.2 * rain / 125) / (1.15 * et / 31);
    assertTrue(days > 1 && days < 4, et + " " + rain + " " + days);
    assertEquals(days, Double.parseDouble(drawn.printed("rain-off", "1", "m8")), 0.051);
    assertEquals("" + (int) days, drawn.printed("timer-page", "Off after 1/2 in, days", "m8"));
    assertEquals("" + (int) (2 * days), drawn.printed("timer-page", "Off after 1 in, days", "m8"));
    assertEquals(
        "%.1f in".formatted(rain / 25.4 * 7 / 31),
        drawn.printed("timer-page", "Rain counted on, a week", "m8"));
  }

  private static final String DRY =
      """
      climateNormals 'dry', units: 'inch fahrenheit',
        rain: [0.9, 0.9, 0.8, 0.2, 0.1, 0, 0.9, 0.9, 0.6, 0.6, 0.6, 0.7],
        max: [68, 71, 78, 86, 95, 104, 107, 105, 100, 89, 77, 66],
        min: [46, 49, 55, 61, 70, 79, 85, 84, 78, 66, 54, 45], source: 'by hand'
      """;

  /**
   * Chives have no depth in FAO-56 Table 22: 1 ft as small plants, lavender 2 ft as shrubs (the
   * rule 1-2-3 of desert towns), of which half is drawn easily at 5 mm a day, 0.04 more for each mm
   * less, 0.8 at most (FAO-56, note of Table 22), of what the soil holds by its own table. All
   * ground is wetted.
   */
  @Test
  void depthsUnknownToTheCropTable_areThoseOfTheClass() {
    String bed =
        "bed('%s', rect(%d.ft, 18.ft, 9.ft, 6.ft), use: 'perennial') { drip emitter: 0.6.gph,"
            + " spacing: 12.inch, rowSpacing: 18.inch; plant '%s' }%n";
    String head = YARD.substring(0, YARD.indexOf("bed(")).replace("climate 'urbana-il'", DRY);
    Drawn drawn =
        Drawn.of(
            head + bed.formatted("herbs", 10, "chives") + bed.formatted("dry", 25, "lavender"));
    herb(drawn, "herbs", drawn.exact("plant-water", "chives", "kc-middle"), 304.8);
    herb(drawn, "dry", drawn.exact("plant-water", "lavender", "kc-middle"), 609.6);
    String notes = drawn.tables().get("rain-off").notes().toString();
    assertTrue(notes.contains("no root depth for chives, lavender"), notes);
    assertFalse(Drawn.of(YARD).tables().get("rain-off").notes().toString().contains("no root"));
    assertFalse(drawn.printed("timer-page", "Off after 1 in, days", "m8").isEmpty());
  }

  private static void herb(Drawn drawn, String bed, double kc, double depthMm) {
    String month = drawn.printed("irrigation", bed, "peak-month");
    int days = List.of("Jun", "Sep").contains(month) ? 30 : 31;
    double use = kc * drawn.exact("water-by-month", month, "reference-et") * 1000 / days;
    double easy = Math.min(0.8, 0.5 + 0.04 * (5 - use));
    assertEquals("100", drawn.printed("irrigation", bed, "wetted"));
    double holds = drawn.exact("materials-soil", "silt loam", "available");
    double apart = holds * depthMm * easy / use;
    assertEquals(
        apart, Double.parseDouble(drawn.printed("irrigation", bed, "days-apart")), 0.02 * apart);
  }
}
