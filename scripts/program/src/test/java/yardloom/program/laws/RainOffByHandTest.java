package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
}
