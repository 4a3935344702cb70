package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A small yard from script to printed tables, worked by hand. Beds of 27 by 12 and 18 by 9 ft, a
 * path of 38 by 3 ft, apart from each other: 324, 162 and 114 sq ft. A cubic yard covers 324 sq ft
 * an inch deep. Rates, truck and weight are rows of the shipped tables, prices the script's own.
 */
class WorkedOrderTest {
  private static final String SCRIPT =
      """
      plan 'Worked', units: 'us'
      work crew: 2, hoursPerDay: 4, start: '2026-09-03', visits: 3
      price 'wood-chip mulch', 13.money, low: 11.money, high: 17.money, per: 'yd3'
      price 'compost', 41.money, low: 37.money, high: 50.money, per: 'yd3'
      price 'cardboard, sheets', 0.7.money, low: 0.5.money, high: 1.1.money
      price 'delivery of bulk', 60.money, low: 52.money, high: 75.money
      price 'soil to fill frames and raised beds', 33.money, low: 31.money, high: 46.money, per: 'yd3'
      price 'mulch bag, 2 cu ft', 4.money
      price 'compost bag, 1 cu ft', 6.money
      labourRate wage: 20.money, overhead: 0.3, markup: 0.1
      sheetMulch {
        chips perennial: 9.inch, annual: 3.inch, path: 5.inch, settling: 0.2
        compost perennial: 0.inch, annual: 2.inch
      }
      lot([point(-60.ft, -15.ft), point(70.ft, -15.ft), point(70.ft, 60.ft), point(-60.ft, 60.ft)])
      bed('berries', rect(0.ft, 0.ft, 27.ft, 12.ft), use: 'perennial') { }
      bed('roots', rect(0.ft, 20.ft, 18.ft, 9.ft), use: 'annual') { soilTop 18.inch }
      path 'way', line([point(0.ft, 16.ft), point(38.ft, 16.ft)]), width: 3.ft
      dropZone 'apron', rect(40.ft, 8.ft, 20.ft, 16.ft)
      dropZone 'side', rect(-30.ft, 18.ft, 12.ft, 16.ft), material: 'compost', barrow: 5.ft3, detour: 1.5
      """;

  private static final String SHEET = "Cardboard and its cover";

  @TempDir private static Path dir;

  private static Map<String, String> files;

  @BeforeAll
  static void draw() throws IOException {
    Files.writeString(dir.resolve("worked.groovy"), SCRIPT);
    Run run = Run.in(dir, "draw", "worked.groovy", "--out", "out", "--as", "csv");
    assertEquals(ExitCode.FINE, run.code(), run.out() + run.err());
    files = Run.files(dir.resolve("out/worked"));
  }

  /** Quantities inside texts are printed with spaces that do not break. */
  private static List<String> rows(String table) {
    String csv = files.get("tables/materials-" + table + ".csv").replace('\u00a0', ' ');
    return csv.lines().skip(1).toList();
  }

  /**
   * Berries have no compost, so 2 in of chips hold the cardboard; 7 in follow. In the order of the
   * surfaces.
   */
  @Test
  void layers_fromTheGroundUp() {
    assertEquals(
        List.of(
            "1 path,way,1,cardboard,," + SHEET,
            "1 path,,2,wood-chip mulch,5.0," + SHEET,
            "2 perennial bed,berries,1,cardboard,," + SHEET,
            "2 perennial bed,,2,wood-chip mulch,2.0," + SHEET,
            "2 perennial bed,,3,wood-chip mulch,7.0,Finish mulch",
            "3 annual bed,roots,1,cardboard,," + SHEET,
            "3 annual bed,,2,compost,2.0," + SHEET,
            "3 annual bed,,3,wood-chip mulch,3.0,Finish mulch"),
        rows("stacks"));
  }

  /**
   * Sheets of 4 by 3 ft lapped 6 in cover 3.5 by 2.5: 26.5 / 3.5 up × 11.5 / 2.5 up = 8 × 5 = 40
   * for the berries, 17.5 / 3.5 × 8.5 / 2.5 = 5 × 4 = 20 for the roots, 37.5 / 3.5 = 11 in one row
   * for the path. Chips 114 × 5 / 324 = 1.76, 324 × 9 / 324 = 9, 162 × 3 / 324 = 1.5.
   */
  @Test
  void takeOff_bySurface() {
    assertEquals(
        List.of(
            "Way,path,114,11,,,5.0,1.76",
            "Berries,perennial bed,324,40,,,9.0,9.00",
            "Roots,annual bed,162,20,2.0,1.00,3.0,1.50",
            "\"all surfaces, exact\",,600,71,,1.00,,12.26"),
        rows("take-off"));
  }

  /**
   * Chips with the cardboard: 324 × 2 / 324 + 114 × 5 / 324 = 3.76 cu yd, + 10 % = 4.14; after: 324
   * × 7 / 324 + 162 × 3 / 324 = 8.5, 9.35. Compost 162 × 2 / 324 = 1, 1.1. All up to the next half
   * yard; 71 sheets + 10 % = 78.1.
   */
  @Test
  void order_byPhase() {
    String why = ",\"10 % for packing and uneven ground, up to the next 0.5 cu yd\"";
    assertEquals(
        List.of(
            "\"cardboard, sheets\"," + SHEET + ",,,71,79,10 % for torn and odd sheets",
            "compost," + SHEET + ",1.00,1.50,," + why,
            "wood-chip mulch," + SHEET + ",3.76,4.50,," + why,
            "wood-chip mulch,Finish mulch,8.50,9.50,," + why),
        rows("order"));
  }

  /**
   * Trucks of 15, 10 and 4 cu yd of chips, of 10, 5 and 1 of compost, of 14, 10 and 5 of soil; a
   * cubic yard of chips weighs 480 to 720 lb, of compost 1,000 to 1,200, of soil 2,160 to 2,640.
   */
  @Test
  void loads_andTheirWeight() {
    assertEquals(
        List.of(
            "soil to fill frames and raised beds," + SHEET + ",9.50,1,1,2,20520,25080",
            "compost," + SHEET + ",1.50,1,1,2,1500,1800",
            "wood-chip mulch," + SHEET + ",4.50,1,1,2,2160,3240",
            "wood-chip mulch,Finish mulch,9.50,1,1,3,4560,6840"),
        rows("loads"));
  }

  /**
   * Compost: 40.5 bags of a cubic foot, so 41 at 6; in bulk 1.5 × 41 + 60; they meet at 60 / (6 ×
   * 27 − 41). Chips, bags of 2 cu ft at 4: 4.5 × 13.5 = 60.75 and 128.25 bags; in bulk 4.5 × 13 +
   * 60 and 9.5 × 13 + 60; they meet at 60 / (4 × 13.5 − 13).
   */
  @Test
  void bagsOrBulk() {
    assertEquals(
        List.of(
            "compost," + SHEET + ",1.50,41,246,122,0.50",
            "wood-chip mulch," + SHEET + ",4.50,61,244,119,1.46",
            "wood-chip mulch,Finish mulch,9.50,129,516,184,1.46"),
        rows("bags-or-bulk"));
  }

  /** A fifth of 12.26 cu yd, then half as much each year. */
  @Test
  void topUp_byYear() {
    assertEquals(List.of("1,2.45", "2,1.23", "3,0.61"), rows("top-up"));
  }

  /**
   * From the middle of the apron, 50 and 16 ft, to the middle of the path 31 ft, of the berries
   * √(36.5² + 10²) = 37.84, of the roots √(41² + 8.5²) = 41.87, each × 1.2; of the side heap, −24
   * and 26, to the roots √(33² + 1.5²) = 33.03 × 1.5. Barrows take 6 cu ft of chips, 5 of compost:
   * 47.5 / 6, 54 / 6, 189 / 6, 40.5 / 6 and 27 / 5, up. There and back. Soil comes on the first
   * spot: 8 cu yd and 15 % are 248.4 cu ft, by 3, since nobody wheels more of it.
   */
  @Test
  void barrows() {
    String berries = "Berries,wood-chip mulch,";
    String roots = "Roots,";
    assertEquals(
        List.of(
            "Way,wood-chip mulch," + SHEET + ",1.76,8,open ground,37.2,595.2",
            berries + SHEET + ",2.00,9,open ground,45.4,817.5",
            roots
                + "soil to fill frames and raised beds,"
                + SHEET
                + ",9.20,83,open ground,50.2,8340.9",
            roots + "compost," + SHEET + ",1.00,6,open ground,49.6,594.6",
            berries + "Finish mulch,7.00,32,open ground,45.4,2906.5",
            roots + "wood-chip mulch,Finish mulch,1.50,7,open ground,50.2,703.4",
            "all,,,,145,,,13958.1"),
        rows("barrows"));
  }

  /**
   * Soil up to 18 in under 2 in of compost: 162 sq ft × 16 in = 216 cu ft = 8 cu yd, + 15 % = 9.2,
   * so 9.5.
   */
  @Test
  void soilOfTheRaisedBed_isOrdered() {
    assertEquals(
        List.of("soil to fill frames and raised beds,,8.00,yd3,9.50,yd3,15 % for settling"),
        rows("hard-goods"));
  }

  /**
   * Ground 600 sq ft; edges 78 + 54 + 82 = 214 ft at 0.015, 0.03 and 0.06 h; 3.76 cu yd of chips
   * and 1 of compost with the cardboard at an hour each. Barrows go 2,007.3 ft and with the soil
   * 8,340.86 ft, 10,348.1 ft or 3,154.1 m, and 3,609.9 ft = 1,100.3 m at 4, 3 and 2 km/h: 1.051 and
   * 0.367 h likely.
   */
  @Test
  void labour_hours() {
    assertEquals(
        List.of(
            "\"call for the marks, photograph them\",Mark utilities,1,,0.3,0.5,1.0",
            "mow low,Mow low,600,sqft,0.1,0.2,0.6",
            "stake out,Stake out,600,sqft,0.6,1.2,2.4",
            "cut edge,Edges and trench,214.0,ft,3.2,6.4,12.8",
            "soak the ground,Soak the ground,600,sqft,0.3,0.6,1.2",
            "lay cardboard," + SHEET + ",600,sqft,2.4,4.8,9.0",
            "fill frames and raised beds," + SHEET + ",8.00,yd3,4.0,8.0,12.0",
            "walk with barrows," + SHEET + ",10348.1,ft,0.8,1.1,1.6",
            "load and spread mulch," + SHEET + ",4.76,yd3,2.4,4.8,7.1",
            "walk with barrows,Finish mulch,3609.9,ft,0.3,0.4,0.6",
            "load and spread mulch,Finish mulch,8.50,yd3,4.3,8.5,12.8",
            "rake level and clean up,Finish mulch,600,sqft,0.3,0.6,1.8",
            "visit through the first season,Establish,3,,1.5,3.0,6.0",
            "\"all, hours of one person\",,,,20.4,40.0,68.9"),
        rows("labour"));
  }

  /**
   * 3 September 2026 is a Thursday; two people at 4 hours make 8 a day. Marks take three days over
   * a weekend. On Tuesday the 8th mowing and stakes take 1.4 h and edges 6.4, 0.2 h less than 8:
   * the two stay for it. From Wednesday soaking takes 0.6 h, cardboard and soil 18.6 h till Friday
   * at 3.2 of 8 h, the finish 9.5 h till Monday the 14th. Three visits one, two and four weeks
   * after Tuesday the 15th, the day that follows: the 22nd, working day 14, to 13 October, 16
   * working days.
   */
  @Test
  void phases_daysAndDates() {
    assertEquals(
        List.of(
            "Mark utilities,1,3,0.5,2026-09-03,2026-09-07",
            "Mow low,4,1,0.2,2026-09-08,2026-09-08",
            "Stake out,4,1,1.2,2026-09-08,2026-09-08",
            "Edges and trench,4,1,6.4,2026-09-08,2026-09-08",
            "Soak the ground,5,1,0.6,2026-09-09,2026-09-09",
            SHEET + ",5,3,18.6,2026-09-09,2026-09-11",
            "Finish mulch,7,2,9.5,2026-09-11,2026-09-14",
            "Establish,14,16,3.0,2026-09-22,2026-10-13"),
        rows("phases").stream().map(r -> r.replaceAll("^((?:[^,]*,){5}[^,]*),.*", "$1")).toList());
  }

  /**
   * Leads of the shipped sources: soil unknown, a week; cardboard and compost 14, chips 30 days.
   * Thirty days before Wednesday the 9th is Monday 10 August, before Friday the 11th Wednesday.
   */
  @Test
  void orders_byDate() {
    assertEquals(
        List.of(
            SHEET + ",soil to fill frames and raised beds,9.50,yd3,7,2026-09-02",
            SHEET + ",\"cardboard, sheets\",79,,14,2026-08-26",
            SHEET + ",compost,1.50,yd3,14,2026-08-26",
            SHEET + ",wood-chip mulch,4.50,yd3,30,2026-08-10",
            "Finish mulch,wood-chip mulch,9.50,yd3,30,2026-08-12"),
        rows("orders-by-phase"));
  }

  private static List<String> likely() {
    return rows("cost").stream().map(r -> r.replaceAll(",[^,]*,[^,]*,[^,]*$", "")).toList();
  }

  /**
   * With everything likely: 79 × 0.70 = 55.30, 1.5 × 41 = 61.50, 14 × 13, one load of compost and
   * two of chips at 60, 9.5 × 33 = 313.50, and 40.04 h at 20 × 1.3 × 1.1 = 28.60: 1,145.14.
   * Together, with the load of soil at 60, 1,997.45. Printed rows add up to the printed total: down
   * to whole units they make 1,996, so one of the two rows that lie a half above theirs goes up,
   * the first of them, which is the soil, and compost stays at 61.
   */
  @Test
  void cost_everythingLikely() {
    assertEquals(
        List.of(
            "soil to fill frames and raised beds,314",
            "delivery of soil to fill frames and raised beds,60",
            "\"cardboard, sheets\",55",
            "compost,61",
            "delivery of compost,60",
            "wood-chip mulch,182",
            "delivery of wood-chip mulch,120",
            "labour,1145",
            "total,1997"),
        likely());
  }

  /**
   * Each alone at its low and high value, against 1,997.45. Labour 20.37 and 68.86 h instead of
   * 40.04; chips in 2 + 3 loads instead of 2; soil 31 to 46 each instead of 33; chips 11 to 17
   * instead of 13; 243.50 of chips and compost 10 % down and 15 % up; compost and soil in 2 loads;
   * sheets at 0.50 to 1.10. Eight are printed.
   */
  @Test
  void drivers_eachAlone() {
    assertEquals(
        List.of(
            "everything likely,,1997,1997,0",
            "labour,pace of work,1435,2822,1387",
            "delivery of wood-chip mulch,load size,1997,2177,180",
            "soil to fill frames and raised beds,price,1978,2121,142",
            "wood-chip mulch,price,1969,2053,84",
            "all mulched ground,depth and settling,1973,2034,61",
            "delivery of compost,load size,1997,2057,60",
            "delivery of soil to fill frames and raised beds,load size,1997,2057,60",
            "\"cardboard, sheets\",price,1982,2029,47"),
        rows("cost-drivers"));
  }

  /**
   * Where one input alone varies, percentiles of the triangle from a over b to c are known: a + √(p
   * (c − a) (b − a)) below b, c − √((1 − p) (c − a) (c − b)) above. Soil from 294.50 over 313.50 to
   * 437, labour from 582.58 over 1,145.14 to 1,969.40; samples hit them to 0.2 %.
   */
  @Test
  void costRange_ofOneTriangle() {
    near("soil to fill frames and raised beds", 310.95, 343.20, 395.05);
    near("labour", 861.86, 1213.4, 1631.3);
  }

  private static void near(String item, double... percentiles) {
    String row = rows("cost").stream().filter(r -> r.startsWith(item)).findFirst().orElseThrow();
    String[] cells = row.split(",");
    for (int i = 0; i < percentiles.length; i++) {
      double printed = Double.parseDouble(cells[i + 2]);
      assertEquals(percentiles[i], printed, 0.5 + 0.002 * percentiles[i], row);
    }
  }
}
