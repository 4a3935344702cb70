package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;

/**
 * Bulk materials of a plan's own, as layers and as an item, from the script to the printed tables.
 *
 * <p>Bed a, 27 × 12 ft: 1 in of biochar is 27 cu ft, 1 cu yd; 6 in of straw 162 cu ft, 6 cu yd. Bed
 * b, 18 × 9 ft: 4 in of straw are 54 cu ft, 2 cu yd, 7.5 in of chips 101.25 cu ft, 3.75 cu yd.
 */
class OwnBulkByHandTest {
  private static final String YARD =
      """
      plan 'Bulk by hand', units: 'us'
      lot([point(0.ft, 0.ft), point(80.ft, 0.ft), point(80.ft, 50.ft), point(0.ft, 50.ft)])
      bulkMaterial('biochar', weighs: 400.lb, wet: 700.lb, each: 1.yd3, load: 2.yd3)
      bulkMaterials('material,weighs_kg,each_m3,load_yd3\\nrice straw,130,2,7')
      dropZone('drive', rect(66.ft, 2.ft, 12.ft, 18.ft), material: 'Rice straw')
      bed('a', rect(10.ft, 27.ft, 27.ft, 12.ft), use: 'annual') { layer 'biochar', 1.inch ; layer 'Rice Straw', 6.inch ; mulch 0.inch ; compost 0.inch }
      bed('b', rect(10.ft, 5.ft, 18.ft, 9.ft), use: 'perennial') { layer 'rice straw', 4.inch ; mulch 7.5.inch ; compost 0.inch }
      item 'biochar', amount: 0.5.yd3, per: 'yd3', price: 210.money, phase: 'plant'
      price 'rice straw', 38.money, per: 'yd3'
      """;

  /** A tenth more, up to the next half cubic yard: straw 8.8, so 9.0; biochar 1.1, so 1.5. */
  @ParameterizedTest(name = "{0}: {1}, {2}")
  @CsvSource({"rice straw, 8.00, 9.00", "biochar, 1.00, 1.50", "wood-chip mulch, 3.75, 4.50"})
  void layers_areOrdered(String item, String exact, String order) {
    Drawn drawn = Drawn.of(YARD);
    assertEquals(exact, drawn.printed("materials-order", item, "exact"));
    assertEquals(order, drawn.printed("materials-order", item, "order"));
  }

  /**
   * 9 cu yd of straw by trucks of 7 are two loads; 130 kg for 2 m³ are 65 × 2.20462 / 1.30795 =
   * 109.6 lb a cubic yard, 986 lb. Biochar, the item first: half a cubic yard, 200 lb dry and 350
   * wet.
   */
  @Test
  void loads_areCountedAndWeighed() {
    Drawn drawn = Drawn.of(YARD);
    assertEquals("2", drawn.printed("materials-loads", "rice straw", "loads"));
    assertEquals("986", drawn.printed("materials-loads", "rice straw", "weight-low"));
    assertEquals("986", drawn.printed("materials-loads", "rice straw", "weight-high"));
    int layer = drawn.texts("materials-loads", "order").lastIndexOf("1.50");
    int item = drawn.texts("materials-loads", "order").indexOf("0.50");
    for (int row : new int[] {layer, item}) {
      assertEquals("biochar", drawn.rows("materials-loads").get(row));
      assertEquals("1", drawn.texts("materials-loads", "loads").get(row));
    }
    assertEquals("200", drawn.texts("materials-loads", "weight-low").get(item));
    assertEquals("350", drawn.texts("materials-loads", "weight-high").get(item));
    assertEquals("600", drawn.texts("materials-loads", "weight-low").get(layer));
    assertEquals("1050", drawn.texts("materials-loads", "weight-high").get(layer));
  }

  /** Straw 9 × 38; the price of the item holds for the layer too, 1.5 × 210. */
  @Test
  void cost_followsTheOrder() {
    Drawn drawn = Drawn.of(YARD);
    assertEquals("342", drawn.printed("materials-cost", "rice straw", "likely"));
    assertEquals(
        List.of("105", "315"),
        drawn.texts("materials-cost", "likely").stream()
            .filter(t -> t.equals("105") || t.equals("315"))
            .sorted()
            .toList());
  }

  /** All that is spread with the cardboard: 1 + 6 + 2 of the layers, at an hour a cubic yard. */
  @Test
  void layers_areSpread_carried_andInTheStack() {
    Drawn drawn = Drawn.of(YARD);
    int row = drawn.texts("materials-labour", "likely").indexOf("9.0");
    assertTrue(drawn.rows("materials-labour").get(row).contains("spread"));
    assertEquals("Cardboard and its cover", drawn.texts("materials-labour", "phase").get(row));
    // 54 and 162 cu ft by barrows of 6 are 9 and 27 trips.
    assertEquals("9", drawn.printed("materials-barrows", "Bed b", "trips"));
    assertEquals("27", drawn.printed("materials-barrows", "Bed a", "trips"));
    assertEquals(
        List.of("cardboard", "rice straw", "wood-chip mulch", "cardboard", "biochar", "rice straw"),
        drawn.texts("materials-stacks", "layer"));
    assertTrue(
        drawn.tables().get("materials-take-off").notes().stream()
            .anyMatch(n -> n.startsWith("Besides rice straw, exact: 8 cu yd")),
        drawn.tables().get("materials-take-off").notes().toString());
  }

  /**
   * A plan that includes its region says otherwise: trucks of 5 cu yd bring 9 in two, of 4 in
   * three.
   */
  @Test
  void localLoad_changesWhatTheRegionSaysOfAnOwnMaterial() {
    String own = "bulkMaterials('material,weighs_kg,each_m3,load_yd3\\nrice straw,130,2,7')\n";
    String plan =
        YARD.replace(own, "")
                .replace(
                    "plan 'Bulk by hand', units: 'us'\n",
                    "plan 'Bulk', units: 'us'\ninclude 'own.groovy'\n")
            + "localLoad('rice straw', likely: 5, low: 4, high: 8, unit: 'yd3', source:"
            + " publication('Trucks', by: 'a farm', seen: 'memory'))\n";
    assertTrue(!plan.contains("bulkMaterials"));
    Drawn drawn =
        Drawn.beside(
            plan,
            "own.groovy",
            "region('Paddies', about: 'Rice.', source: publication('Farms', by: 'a survey', seen:"
                + " 'memory'))\n"
                + own);
    assertEquals("2", drawn.printed("materials-loads", "rice straw", "loads"));
    assertEquals("3", drawn.printed("materials-loads", "rice straw", "loads-most"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bulkMaterial('Compost', weighs: 400.lb, each: 1.yd3, load: 2.yd3) | is a shipped material",
        "bulkMaterial('gravel', weighs: 400.lb, each: 1.yd3, load: 2.yd3) | is a shipped material",
        "bulkMaterial('BIOCHAR', weighs: 400.lb, each: 1.yd3, load: 2.yd3) | is already given at",
        "bulkMaterial('a', weighs: 400.lb, wet: 300.lb, each: 1.yd3, load: 2.yd3) | rises from low to likely",
        "bulkMaterial('a', weighs: 19.lb, each: 1.yd3, load: 2.yd3) | 20 to 5,000 lb (12 to 2,970 kg/m³), got 19.0 lb",
        "bulkMaterial('a', weighs: 400.lb, each: 1.gal, load: 2.yd3) | look at the units",
        "bulkMaterial('a', weighs: 400.lb, each: 0.yd3, load: 2.yd3) | `each:` is more than nothing",
        "bulkMaterial('a', weighs: 400.lb, each: 1.yd3, load: 0.09.yd3) | a truck brings 0.1 to 120 cu yd",
        "bulkMaterials('material,weighs_lb,each_yd3\\na,300,1') | bulk materials:2:1: a bulk material needs `load_yd3` or `load_m3`",
        "bed('c', rect(40.ft, 5.ft, 4.ft, 4.ft)) { layer 'bio char', 1.inch } | Did you mean `biochar`?",
        "bed('c', rect(40.ft, 5.ft, 4.ft, 4.ft)) { layer 'biochar', 37.inch } | at most 36 in",
        "bed('c', rect(40.ft, 5.ft, 4.ft, 4.ft)) { layer 'biochar', 0.inch } | deeper than nothing",
        "bed('c', rect(40.ft, 5.ft, 4.ft, 4.ft)) { layer 'biochar', 1.inch ; layer 'biochar', 2.inch } | is already given in line 10",
        "dropZone('x', rect(60.ft, 30.ft, 9.ft, 9.ft), material: 'straw') | no `bulkMaterial` is called 'straw'",
      })
  void whatCannotBe_isRefused(String words, String said) {
    PlanException e = assertThrows(PlanException.class, () -> Drawn.of(YARD + words + "\n"));
    assertTrue(e.problems().get(0).toString().contains(said), e.problems().get(0).toString());
  }
}
