package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * From plan text to the printed irrigation and load tables, by hand from the printed weather.
 *
 * <p>Sources: crop evapotranspiration and the water that roots draw easily, FAO Irrigation and
 * Drainage Paper 56, eq. 58, 82 and 83 and the footnote of Table 22; efficiency of drip 0.81,
 * California Model Water Efficient Landscape Ordinance; 231 cubic inches to the gallon.
 */
class WaterByHandTest {
  /**
   * A bed that narrows from 20 ft to 8 ft over 10 ft: 140 sq ft. Rows 3 ft apart: 10 / 3 = 3.33,
   * three; the first (10 − 2 × 3) / 2 = 2 ft from the long side, so at 2, 5 and 8 ft, where the bed
   * is 17.6, 14 and 10.4 ft wide. A stem in the way of a row would lead it aside.
   */
  private static final String YARD =
      """
      plan 'Water by hand', units: 'us'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.ft, 0.ft), point(45.ft, 0.ft), point(45.ft, 33.ft), point(0.ft, 33.ft)])
      bed('bed', polygon([point(10.ft, 10.ft), point(30.ft, 10.ft), point(18.ft, 20.ft), point(10.ft, 20.ft)]), use: 'perennial') {
        drip emitter: 0.6.gph, spacing: 13.inch, rowSpacing: 3.ft
        %s
      }
      """;

  private static double number(Drawn drawn, String table, String row, String column) {
    return Double.parseDouble(drawn.printed(table, row, column));
  }

  /**
   * 17.6 + 14 + 10.4 = 42 ft; outlets every 13 in from half a spacing on: 16 + 13 + 10 = 39. The
   * one cane stands 10 in from the first row, in the way of none.
   */
  @Test
  void rows_ofABedThatNarrows_lieEvenlyInIt() {
    String plant = "plantAt 'red raspberry', at: [point(15.ft, 12.833.ft)]";
    Drawn drawn = Drawn.of(YARD.formatted(plant));
    assertEquals("3", drawn.printed("irrigation", "bed", "rows"));
    assertEquals("42.0", drawn.printed("irrigation", "bed", "length"));
    assertEquals("39", drawn.printed("irrigation", "bed", "outlets"));
    assertEquals("140", drawn.printed("irrigation", "bed", "area"));
  }

  /**
   * July: 140 sq ft × (Kc × ET − effective rain) is the need; seven of its 31 days through 39
   * outlets at 0.81 take 7 / 31 × need / (flow × 0.81) h. The outlets are rated 0.6 gph at 20 psi;
   * behind the regulator of 25 psi, by the root of the pressure, they give 39 × 0.6 × √(25 / 20) =
   * 26.2 gph, less what so short a line takes, under half a percent.
   */
  @Test
  void weeklyRunTime_atThePeak_isSevenDaysNeedThroughTheOutlets() {
    Drawn drawn = Drawn.of(YARD.formatted("plant 'red raspberry'"));
    assertEquals("Jul", drawn.printed("irrigation", "bed", "peak-month"));
    double kc = number(drawn, "plant-water", "red raspberry", "kc-middle");
    double depthIn =
        (kc * drawn.exact("water-by-month", "Jul", "reference-et")
                - drawn.exact("water-by-month", "Jul", "effective-rain"))
            / 0.0254;
    double gallons = 140 * 144 * depthIn / 231;
    assertTrue(gallons > 200, "a need to tell by: " + gallons);
    double flowGph = 39 * 0.6 * Math.sqrt(25.0 / 20);
    // The flow is printed in hundredths of a gallon a minute: 0.3 gph.
    assertEquals(flowGph, 60 * number(drawn, "irrigation", "bed", "flow"), 0.31 + 0.005 * flowGph);
    // The month's Kc is the mean of its days, a little below the middle's.
    double net = drawn.exact("water-by-month", "Jul", "need") / 0.003785411784;
    assertEquals(gallons, net, 0.02 * gallons);
    double hours = 7 * net / 31 / (flowGph * 0.81);
    // Six days instead of seven are 14 % less, 0.75 for 0.81 is 8 % more.
    assertEquals(hours, drawn.exact("irrigation", "bed", "peak-hours"), 0.005 * hours);
    assertEquals(hours, number(drawn, "irrigation", "bed", "peak-hours"), 0.051 + 0.005 * hours);
  }

  /**
   * What is drawn easily, available share × root depth × p, over Kc × ET of a day; p is the table's
   * plus 0.04 for each millimetre a day below 5. Strawberries root 8 in deep, asparagus 4 ft. An
   * outlet of 0.6 gph wets 2 + 0.1 / 0.5 = 2.2 ft in silt loam, less than the 3 ft between rows: 39
   * × 13 in × 2.2 ft of 140 sq ft, 66 percent, hold water.
   */
  @Test
  void daysApart_oftwoPlants_areThoseOfTheThirstierOne() {
    Drawn drawn =
        Drawn.of(
            YARD.formatted("plant 'asparagus', share: 0.5\n  plant 'garden strawberry', share: 0.5")
                + "soilTexture 'silt loam', organic: 3\n");
    double deep = days(drawn, "asparagus");
    double wetted = 39 * 13 / 12.0 * 2.2 / 140;
    assertEquals(100 * wetted, number(drawn, "irrigation", "bed", "wetted"), 0.51);
    double shallow = wetted * days(drawn, "garden strawberry");
    assertTrue(deep > 3 * shallow, deep + " and " + shallow);
    assertEquals(shallow, number(drawn, "irrigation", "bed", "days-apart"), 0.051 + 0.03 * shallow);
  }

  /** Roots are printed from … to …; grown plants are reckoned with the lesser of them. */
  private static double days(Drawn drawn, String plant) {
    double useIn =
        number(drawn, "plant-water", plant, "kc-middle")
            * number(drawn, "water-by-month", "Jul", "reference-et")
            / 31;
    double share =
        number(drawn, "plant-water", plant, "easy-share") / 100 + 0.04 * (5 - 25.4 * useIn);
    double depthIn =
        Math.min(
            12 * drawn.exact("plant-water", plant, "roots-from") / 0.3048,
            number(drawn, "materials-soil", "silt loam", "depth"));
    double available = drawn.exact("materials-soil", "silt loam", "available");
    return available * depthIn * share / useIn;
  }

  /**
   * Chips of 500 to 900 lb a cubic yard, likely 640: what is ordered times the lightest and the
   * heaviest.
   */
  @Test
  void loads_ofChipsOfGivenDensity_weighFromTheLightestToTheHeaviest() {
    Drawn drawn =
        Drawn.of(
            YARD.formatted("plant 'red raspberry'")
                + "sheetMulch { chips perennial: 5.inch }\n"
                + "localDensity 'wood-chip mulch', likely: 640, low: 500, high: 900, unit:"
                + " 'lb/yd3', source: publication('scales', by: 'by hand', seen: 'memory')\n");
    double yards = number(drawn, "materials-loads", "wood-chip mulch", "order");
    assertEquals(500 * yards, number(drawn, "materials-loads", "wood-chip mulch", "weight-low"), 1);
    assertEquals(
        900 * yards, number(drawn, "materials-loads", "wood-chip mulch", "weight-high"), 1);
    // 140 sq ft × 5 in / 324 = 2.16 cu yd and the allowance; raspberries bear 6 in.
    assertEquals(
        140 * 5 / 324.0, number(drawn, "materials-order", "wood-chip mulch", "exact"), 0.006);
  }

  /** A dry April of 7.5 °C: hardy kale grows from 5 °C on, tender tomatoes stand indoors. */
  @Test
  void april_dryAndCool_waterIsDrawnByTheHardyAndNotByTheTender() {
    String spring =
        YARD.replace(
                "climate 'urbana-il'",
                "climateNormals('place', rain: [60, 60, 60, 0, 60, 60, 60, 60, 60, 60, 60, 60],"
                    + " max: [1, 3, 7, 13, 20, 26, 29, 28, 24, 16, 8, 2],"
                    + " min: [-9, -7, -2, 2, 8, 14, 17, 16, 11, 4, -2, -7], units: 'mm celsius',"
                    + " source: 'by hand')\n"
                    + "frost last: '05-10', first: '10-10', source: 'by hand'")
            .replace("'perennial'", "'annual'");
    Drawn hardy = Drawn.of(spring.formatted("plant 'kale'"));
    Drawn tender = Drawn.of(spring.formatted("plant 'tomato'"));
    assertTrue(hardy.exact("water-by-month", "Apr", "need") > 0.1, "kale in April");
    assertEquals(0, tender.exact("water-by-month", "Apr", "need"), 1e-12, "tomatoes in April");
    assertTrue(tender.exact("water-by-month", "Jul", "need") > 0.1, "tomatoes in July");
  }
}
