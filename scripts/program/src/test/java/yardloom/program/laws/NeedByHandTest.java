package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * New plants' water and the water allowance, from plan text to the printed tables, by hand; no two
 * inputs are equal.
 */
class NeedByHandTest {
  private static final String YARD =
      """
      plan 'Need by hand', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '04-25', first: '10-14'
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      work start: '2027-04-26', crew: 3
      sheetMulch { chips perennial: 4.inch }
      bed('herbs', rect(10.ft, 10.ft, 12.ft, 5.ft), use: 'annual') { plant 'tomato', share: 0.5 }
      """;

  private static double number(Drawn drawn, String table, String row, String column) {
    return Double.parseDouble(drawn.printed(table, row, column));
  }

  /**
   * 30 sq ft of tomatoes in Urbana's May: 0.7 (the least coefficient of new plants) × ET of May /
   * 31 a day, through 231 cubic inches to the gallon and over 0.81; every day for 14 days.
   */
  @Test
  void newPlants_getWhatTheDaysTake() {
    Drawn drawn = Drawn.of(YARD);
    double etIn = number(drawn, "water-by-month", "May", "reference-et");
    double each = 30 * 144 * 0.7 * etIn / 31 / 231 / 0.81;
    assertEquals("14", drawn.printed("first-weeks", "herbs", "waterings"));
    assertEquals(each, number(drawn, "first-weeks", "herbs", "each"), 0.51 + 0.01 * each);
    assertEquals(14 * each, number(drawn, "first-weeks", "herbs", "all"), 0.6 + 0.01 * 14 * each);
  }

  /**
   * Published lines of a worksheet: 0.8 × 7,000, 0.7 × 10,000 and 0.5 × 16,000 sq ft are 5,600,
   * 7,000 and 8,000 (W-04, example of Fresno); with ETo 51.1 in and an efficiency of 0.71 the first
   * uses 51.1 × 0.62 × 5,600 / 0.71 = 249,886 gal. Allowance: 51.1 × 0.62 × 0.7 × 33,000 = 731,854
   * gal.
   */
  @Test
  void allowance_ofThePublishedWorksheet() {
    Drawn drawn =
        Drawn.of(
            """
            plan 'Fresno', units: 'us'
            lot([point(0.ft, 0.ft), point(300.ft, 0.ft), point(300.ft, 300.ft), point(0.ft, 300.ft)])
            waterAllowance factor: 0.7, efficiency: 0.71, yearlyEt: 51.1.inch
            bed('high', rect(10.ft, 10.ft, 100.ft, 70.ft)) { plantFactor 0.8 }
            bed('middle', rect(10.ft, 100.ft, 125.ft, 80.ft)) { plantFactor 0.7 }
            bed('low', rect(150.ft, 100.ft, 100.ft, 160.ft)) { plantFactor 0.5 }
            """);
    assertEquals("5600", drawn.printed("water-allowance", "high", "factor-area"));
    assertEquals("7000", drawn.printed("water-allowance", "middle", "factor-area"));
    assertEquals("8000", drawn.printed("water-allowance", "low", "factor-area"));
    assertEquals(249_886, number(drawn, "water-allowance", "high", "use"), 1);
    assertEquals(731_854, number(drawn, "water-allowance", "Allowance", "use"), 1);
  }

  /** A food bed is special area: its allowance is its use, 51.1 × 0.62 × 200 sq ft = 6,336 gal. */
  @Test
  void foodBed_hasTheFullAllowance() {
    Drawn drawn =
        Drawn.of(
            """
            plan 'Food', units: 'us'
            lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 50.ft), point(0.ft, 50.ft)])
            waterAllowance yearlyEt: 51.1.inch
            bed 'food', rect(10.ft, 10.ft, 20.ft, 10.ft)
            """);
    assertEquals(6336, number(drawn, "water-allowance", "food", "use"), 1);
    assertEquals(6336, number(drawn, "water-allowance", "Allowance", "use"), 1);
  }

  /**
   * R-11, Kains: five persons at 5 gal a day use 5 × 5 × 365 = 9,125 gal a year; a roof of 3,000 sq
   * ft and a tank of 5,000 gal give all of it in Urbana.
   */
  @Test
  void otherUse_isDrawnEveryDay() {
    Drawn drawn =
        Drawn.of(
            """
            plan 'Household', units: 'us'
            site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
            climate 'urbana-il'
            lot([point(0.ft, 0.ft), point(99.ft, 0.ft), point(99.ft, 99.ft), point(0.ft, 99.ft)])
            roof 'barn', rect(10.ft, 10.ft, 60.ft, 50.ft), surface: 'metal'
            tank('cistern', point(80.ft, 30.ft), roof: 'barn') {
              round diameter: 10.ft, height: 8.ft
              otherUse 25.gal
            }
            """);
    assertEquals("9125", drawn.printed("tank-sizes", "5000", "used"));
    // R-10, Kains: 10 ft by 8 ft hold 4,700 gal.
    assertEquals(4700, number(drawn, "tanks", "cistern", "holds"), 1);
  }

  /** The size factor of a rain garden: 375 sq ft of roof on silt loam at 5 %: × 0.25. */
  @Test
  void rainGarden_bySoil_hasThePublishedFactor() {
    Drawn drawn =
        Drawn.of(
            """
            plan 'Garden', units: 'us'
            lot([point(0.ft, 0.ft), point(99.ft, 0.ft), point(99.ft, 99.ft), point(0.ft, 99.ft)])
            soilTexture 'silt loam'
            roof 'main', rect(10.ft, 10.ft, 25.ft, 15.ft), surface: 'metal'
            rainGarden 'main', slope: 5
            """);
    // 93.75 sq ft (Illinois DNR's 0.25, G-01; UW Extension's silty soil at 6 to 7 in).
    assertEquals("94", drawn.printed("rain-gardens", "main", "by-factor"));
    // G-03, sandy soil: 0.19 at 3 to 5 in, 0.15 at 6 to 7 in: 71.25 and 56.25 sq ft.
    assertEquals("71", gardenOnSand(3).printed("rain-gardens", "main", "by-factor"));
    assertEquals("56", gardenOnSand(6).printed("rain-gardens", "main", "by-factor"));
  }

  private static Drawn gardenOnSand(int slope) {
    return Drawn.of(
        """
        plan 'Garden', units: 'us'
        lot([point(0.ft, 0.ft), point(99.ft, 0.ft), point(99.ft, 99.ft), point(0.ft, 99.ft)])
        soilTexture 'sandy loam'
        roof 'main', rect(10.ft, 10.ft, 25.ft, 15.ft), surface: 'metal'
        rainGarden 'main', slope: %d
        """
            .formatted(slope));
  }

  /** 200 sq ft × 1 in × 144 / 231 = 124.7 gal in July, whatever grows there; 154 gal over 0.81. */
  @Test
  void ownNeed_goesBeforeThePlants() {
    Drawn drawn =
        Drawn.of(
            YARD.replace(
                "bed('herbs', rect(10.ft, 10.ft, 12.ft, 5.ft), use: 'annual') { plant 'tomato', share: 0.5 }",
                "bed('herbs', rect(10.ft, 10.ft, 20.ft, 10.ft), use: 'annual') {\n  plant 'tomato'\n"
                    + "  waterNeed([0.inch, 0.inch, 0.inch, 0.inch, 0.inch, 0.inch, 1.inch, 0.inch,"
                    + " 0.inch, 0.inch, 0.inch, 0.inch], source: 'measured')\n}"));
    assertEquals("125", drawn.printed("water-by-month", "Jul", "need"));
    assertEquals("154", drawn.printed("water-by-month", "Jul", "need-gross"));
    assertEquals("0", drawn.printed("water-by-month", "Jun", "need"));
  }

  /** Half of what is shed by the table's metal, 0.95, is shed by a share of 0.475. */
  @Test
  void ownShare_goesBeforeTheTable() {
    String yard =
        """
        plan 'Share', units: 'us'
        climate 'urbana-il'
        lot([point(0.ft, 0.ft), point(99.ft, 0.ft), point(99.ft, 99.ft), point(0.ft, 99.ft)])
        roof 'main', rect(10.ft, 10.ft, 50.ft, 40.ft), surface: 'metal'
        """;
    double table = number(Drawn.of(yard), "water-by-month", "Jul", "roof-yield");
    double own =
        number(
            Drawn.of(yard + "roofShare 'main', 0.475, source: 'measured'\n"),
            "water-by-month",
            "Jul",
            "roof-yield");
    assertEquals(table / 2, own, 1);
  }

  private static final String FOG =
      """
      plan 'Fog', units: 'us'
      site 'Coast', latitude: 37.5.deg, longitude: -122.4.deg, elevation: 60.m, zone: 'America/Los_Angeles'
      climateNormals 'Coast', units: 'inch fahrenheit',
        rain: [4, 4, 3, 1.5, 0.8, 1, 2, 0, 0, 1, 2, 4],
        max: [58, 60, 61, 63, 64, 66, 67, 68, 70, 69, 63, 58],
        min: [44, 46, 47, 48, 50, 52, 54, 55, 54, 52, 48, 44],
        source: 'made up'
      effectiveRain 'usbr'
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      bed('greens', rect(10.ft, 10.ft, 16.ft, 10.ft), use: 'perennial') { plant 'globe artichoke' }
      """;

  /**
   * Of 2 in of July rain 1.85 count by the steps of the Bureau of Reclamation (reference row P-10),
   * of 1 in in June 0.95; 0.4 and 0.3 in of fog count whole: 160 sq ft × 0.4 in × 144 / 231 = 39.9
   * gal less are asked.
   */
  @Test
  void fog_countsAsRain() {
    Drawn dry = Drawn.of(FOG);
    Drawn foggy =
        Drawn.of(
            FOG
                + "fogDrip([0.inch, 0.inch, 0.inch, 0.inch, 0.2.inch, 0.3.inch, 0.4.inch, 0.inch,"
                + " 0.inch, 0.inch, 0.inch, 0.inch], source: 'a gauge under the trees')\n");
    assertEquals("1.85", dry.printed("water-by-month", "Jul", "effective-rain"));
    assertEquals("2.25", foggy.printed("water-by-month", "Jul", "effective-rain"));
    assertEquals("1.25", foggy.printed("water-by-month", "Jun", "effective-rain"));
    assertEquals("0.40", foggy.printed("water-by-month", "Jul", "fog"));
    assertEquals("0.90", foggy.printed("water-by-month", "Year", "fog"));
    double less =
        dry.exact("water-by-month", "Jul", "need") - foggy.exact("water-by-month", "Jul", "need");
    assertEquals(160 * 0.4 * 144 / 231 * 3.785411784, 1000 * less, 0.5);
    String note = String.join(" ", foggy.tables().get("water-by-month").notes());
    assertTrue(note.contains("fog that drips (a gauge under the trees"), note);
    assertTrue(
        String.join(" ", dry.tables().get("water-by-month").notes()).contains("without fog"));
  }
}
