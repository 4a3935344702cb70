package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;

/** Small yards from the script to the printed tables, every figure worked by hand here. */
class WorkedYardsTest {
  private static final String LOT =
      "lot([point(0.ft, 0.ft), point(90.ft, 0.ft), point(90.ft, 90.ft), point(0.ft, 90.ft)])\n";

  @TempDir private Path dir;

  private Map<String, String> drawn(String plan) throws IOException {
    Files.writeString(dir.resolve("plan.groovy"), plan);
    Run run = Run.in(dir, "draw", "plan.groovy", "--out", "out", "--as", "csv");
    Map<String, String> files = Run.files(dir.resolve("out/plan"));
    assertTrue(!files.isEmpty(), run.out() + run.err());
    return files;
  }

  private static List<DataRow> rows(Map<String, String> files, String table) {
    return DataTable.parse(table, files.get("tables/" + table + ".csv")).rows();
  }

  /**
   * Planting. Strawberries at 12 to 18 in, 15 in the middle (University of Idaho Extension), both
   * ways in 4.5 by 11 ft, half a spacing from every edge: (54 - 15) / 15 = 2.6, 3 rows; (132 - 15)
   * / 15 = 7.8, 8 in each: 24. They bring 0.5 to 1 lb a foot of row: 24 × 1.25 = 30 ft, 15 to 30
   * lb; over 49.5 sq ft 0.30 to 0.61.
   *
   * <p>Asparagus at 9 to 18 in, 13.5, in rows 36 to 48 in apart (a spacing chart): 3 by 20 ft hold
   * one row of (240 - 13.5) / 13.5 = 16.8, 17. 17 × 1.125 = 19.125 ft at 0.3 to 0.4 lb: 5.74 to
   * 7.65 lb; over 60 sq ft 0.10 to 0.13.
   *
   * <p>A pear grows 15 to 20 ft wide, 17.5, and brings 20 to 45 kg, 44.1 to 99.2 lb (Appropedia);
   * drawn 12.6 ft wide it has (12.6 / 17.5)² = 0.5184 of that: 22.86 to 51.43 lb. An espalier 9 of
   * 12 ft wide brings 0.75 of 30 to 60 lb: 22.5 to 45 lb. All: 66.1 to 134.1 lb.
   */
  @Test
  void planting_countsAndHarvest_areThoseWorkedByHand() throws IOException {
    Map<String, String> files =
        drawn(
            "plan 'Planting', units: 'us'\n"
                + LOT
                + """
                bed('a', rect(5.ft, 5.ft, 4.5.ft, 11.ft), use: 'perennial') { plant 'garden strawberry' }
                bed('b', rect(15.ft, 5.ft, 3.ft, 20.ft), use: 'perennial') { plant 'asparagus' }
                tree('c', point(50.ft, 50.ft), crown: 12.6.ft, height: 12.ft, leaf: 'deciduous') { species 'European pear' }
                tree('d', point(75.ft, 50.ft), crown: 3.ft, height: 8.ft, leaf: 'deciduous') {
                  species 'apple (dwarf)'
                  trained 'espalier', width: 9.ft
                }
                """);
    List<DataRow> planting = rows(files, "planting");
    assertEquals(
        List.of("24", "17", "1", "1"), planting.stream().map(r -> r.text("count")).toList());
    assertEquals(
        List.of("15.0", "42.0"),
        planting.subList(0, 2).stream().map(r -> r.text("rows_inch")).toList());
    List<DataRow> harvest = rows(files, "harvest");
    assertEquals(
        List.of("15", "6", "23", "23", "66"),
        harvest.stream().map(r -> r.text("from_lb")).toList());
    assertEquals(
        List.of("30", "8", "51", "45", "134"), harvest.stream().map(r -> r.text("to_lb")).toList());
    assertEquals("0.30–0.61", harvest.get(0).text("by-area"));
    assertEquals("0.10–0.13", harvest.get(1).text("by-area"));
    assertEquals("apple (dwarf), espalier", harvest.get(3).text("plant"));
  }

  /**
   * Climate. Hargreaves: days × 0.0023 × (mean + 17.8) × √(max - min) × Ra / 2.45, with the
   * radiation of 40° N in MJ a square metre and day from FAO-56, Annex 2, Table 2.6 (memory; the
   * formula itself is held by published rows of its own). January: 31 × 0.0023 × (1 + 17.8) × √6 ×
   * 15.0 / 2.45 = 20.1 mm; July: 31 × 0.0023 × (23 + 17.8) × √14 × 40.8 / 2.45 = 181.3 mm. Frost is
   * as the plan says it.
   */
  @Test
  void climate_evapotranspirationAndFrost_areThoseWorkedByHand() throws IOException {
    Map<String, String> files =
        drawn(
            """
            plan 'Climate', units: 'metric'
            site 'somewhere', latitude: 40.deg, longitude: -88.deg, elevation: 200.m, zone: 'America/Chicago'
            climateNormals('our town', rain: [50, 45, 70, 90, 110, 105, 100, 95, 80, 75, 65, 55],
              max: [4, 6, 12, 18, 24, 28, 30, 29, 25, 19, 11, 5],
              min: [-2, -1, 3, 7, 12, 15, 16, 16.5, 13, 8, 3, -0.5], units: 'mm celsius', source: 'demo')
            frost last: '04-21', first: '10-17', source: 'demo'
            """
                + LOT
                + "bed('a', rect(5.ft, 5.ft, 4.5.ft, 11.ft), use: 'perennial') { plant 'chives' }\n");
    double[] ra = {15.0, 20.4, 27.2, 34.7, 39.7, 41.9, 40.8, 36.7, 30.0, 22.5, 16.3, 13.6};
    double[] max = {4, 6, 12, 18, 24, 28, 30, 29, 25, 19, 11, 5};
    double[] min = {-2, -1, 3, 7, 12, 15, 16, 16.5, 13, 8, 3, -0.5};
    int[] days = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    List<DataRow> water = rows(files, "water-by-month");
    for (int m = 0; m < 12; m++) {
      double mean = (max[m] + min[m]) / 2;
      double mm = days[m] * 0.0023 * (mean + 17.8) * Math.sqrt(max[m] - min[m]) * ra[m] / 2.45;
      double printed = water.get(m).number("reference-et_mm");
      // February has 28.25 days and the table rounds its radiation to a tenth.
      assertEquals(mm, printed, 0.015 * mm + 0.5, "month " + (m + 1));
    }
    assertEquals(20.1, water.get(0).number("reference-et_mm"), 0.8);
    assertEquals(181.3, water.get(6).number("reference-et_mm"), 2.5);
    List<DataRow> frost = rows(files, "frost");
    assertEquals("--04-21", frost.get(0).text("half"));
    assertEquals("--10-17", frost.get(1).text("half"));
    // Chives from six weeks before the last frost to eight after it.
    DataRow chives = rows(files, "planting-times").get(0);
    assertEquals("--03-10", chives.text("from"));
    assertEquals("--06-16", chives.text("until"));
  }

  /**
   * Soil. Beds of 5 by 30 and 7 by 22 ft, 304 sq ft of clay loam. Lime from pH 5.2 to 6.2: at 5.2
   * the table has 150 - 0.2 / 0.5 × (150 - 105) = 132 lb on 1000 sq ft, at 6.2 55 × 0.3 / 0.5 = 33
   * (agroconection.com, read): 99, on the beds 30.1 lb of pure carbonate, at 80 % 37.6 lb. Nitrogen
   * at 3 lb on 1000 sq ft: 0.91 lb, which 4.34 lb of 21-0-0 bring. Clay loam takes 5 to 10 mm an
   * hour (FAO manual 5): 5 mm are 0.20 in.
   */
  @Test
  void soil_amendmentsAndIntake_areThoseWorkedByHand() throws IOException {
    Map<String, String> files =
        drawn(
            "plan 'Soil', units: 'us'\n"
                + LOT
                + """
                soilTexture 'clay loam', organic: 2.2, depth: 21.inch
                soilTest { acidity ph: 5.2, wanted: 6.2, limePurity: 80 ; nitrogen rate: 3.lb, grade: '21-0-0' }
                bed 'a', rect(5.ft, 5.ft, 5.ft, 30.ft), use: 'annual'
                bed 'b', rect(25.ft, 5.ft, 7.ft, 22.ft), use: 'perennial'
                """);
    List<DataRow> doses = rows(files, "materials-amendments");
    assertEquals(
        List.of("ground limestone 38 lb", "nitrogen 0.91 lb", "fertilizer 21-0-0 4.34 lb"),
        doses.stream()
            .map(d -> d.text("item") + " " + d.text("amount") + " " + d.text("amount_unit"))
            .toList());
    DataRow soil = rows(files, "materials-soil").get(0);
    assertEquals("clay loam", soil.text("texture"));
    assertEquals(0.20, soil.number("intake_inch"), 1e-9);
    assertEquals(21, soil.number("depth_inch"), 1e-9);
    assertEquals("moderate", soil.text("intake-class"));
  }
}
