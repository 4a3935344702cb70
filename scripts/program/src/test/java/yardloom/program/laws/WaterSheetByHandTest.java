package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.table.Table;

/**
 * Zones by what the tap gives, by need and by sun, and what stands on the irrigation sheet beside
 * the tables: the page as built and the winter plan. No two inputs of a yard are equal.
 *
 * <p>Sources: q = k × √p of plain outlets (EPANET 2.2 manual, chapter 3); beds of one zone ask for
 * at least 70 percent of the thirstiest (common practice).
 */
class WaterSheetByHandTest {
  private static String bed(String name, double y, int julyMm) {
    return String.format(
        """
        bed('%s', rect(4.m, %.1f.m, 10.m, 1.m), use: 'perennial') {
          drip emitter: 2.lph, spacing: 33.cm, rowSpacing: 50.cm
          waterNeed([0.mm, 0.mm, 0.mm, 0.mm, 0.mm, 10.mm, %d.mm, 10.mm, 0.mm, 0.mm, 0.mm, 0.mm], source: 'by hand')
        }
        """,
        name, y, julyMm);
  }

  private static String yard(String more) {
    return """
        plan 'Zones', units: 'metric'
        site 'Urbana', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 222.m, zone: 'America/Chicago'
        climate 'urbana-il'
        frost last: '04-25', first: '10-14', source: 'by hand'
        lot([point(0.m, 0.m), point(40.m, 0.m), point(40.m, 32.m), point(0.m, 32.m)])
        tap 'bib', point(1.m, 1.m)
        headAssembly backflow: 'double check'
        """
        + more;
  }

  private static final String THREE =
      yard(
          "supply flow: 300.lph\n"
              + bed("most", 4, 100)
              + bed("next", 7, 95)
              + bed("third", 10, 90)
              + bed("least", 13, 50));

  private static List<Panel> sheet(Drawn drawn) {
    return drawn.outcome().sheets().stream()
        .filter(s -> s.id().equals("irrigation"))
        .flatMap(s -> s.panels().stream())
        .toList();
  }

  private static String notes(Drawn drawn, String title) {
    return sheet(drawn).stream()
        .filter(Panel.Notes.class::isInstance)
        .map(Panel.Notes.class::cast)
        .filter(n -> n.title().equals(title))
        .flatMap(n -> n.paragraphs().stream())
        .collect(Collectors.joining(" "));
  }

  /**
   * Two rows of 30 outlets in each bed: 60 × 2 L/h × √(25 / 20) = 134 L/h behind the regulator of
   * 25 psi. Two of them are 268 L/h, a third is over 300; 50 mm are 56 percent of 90, too little
   * for one zone.
   */
  @Test
  void zones_keepToTheTapAndToTheNeed() {
    Drawn drawn = Drawn.of(THREE);
    assertEquals(List.of("most, next", "third", "least"), drawn.texts("zones", "beds"));
    double bed = 60 * 2 * Math.sqrt(25 / 20.0);
    double[] flows = {2 * bed, bed, bed};
    for (int z = 0; z < 3; z++) {
      String zone = Integer.toString(z + 1);
      double flow = Double.parseDouble(drawn.printed("zones", zone, "flow"));
      assertEquals(flows[z], flow, 0.02 * flows[z], zone);
    }
    // 100 mm of 10 sq m over 0.81 in 31 days, seven of them: 278.8 L through 134 L/h, 2.08 h.
    double hours = 10 * 100 / 0.81 * 7 / 31 / bed;
    assertEquals(hours, Double.parseDouble(drawn.printed("zones", "1", "peak-hours")), 0.1);
  }

  /** The same four, all asking for the same but one behind a barn: it is alone in its zone. */
  @Test
  void zones_partBedsInTheShade() {
    Drawn drawn =
        Drawn.of(
            yard(
                "supply flow: 900.lph\n"
                    + "building('barn', rect(3.m, 16.m, 14.m, 8.m), eaves: 7.m, ridge: 9.m, roof: 'gable')\n"
                    + bed("open", 5, 80)
                    + bed("shady", 24.5, 78)));
    assertEquals(2, drawn.rows("zones").size());
    List<String> light = drawn.texts("zones", "light");
    assertFalse(light.get(0).equals(light.get(1)), light.toString());
  }

  /** A line for each zone, with what is planned and blanks to write in. */
  @Test
  void asBuiltPage_hasALineForEachZone() {
    Drawn drawn = Drawn.of(THREE);
    Table page =
        sheet(drawn).stream()
            .filter(Panel.TableBlock.class::isInstance)
            .map(p -> ((Panel.TableBlock) p).table())
            .filter(t -> t.id().equals("as-built"))
            .findFirst()
            .orElseThrow();
    assertEquals(3, page.rows().size());
    assertEquals("most, next", page.rows().get(0).get(1).value().orElseThrow());
    double planned = Drawn.value(page.rows().get(0).get(2));
    assertEquals(drawn.exact("zones", "1", "flow"), planned, 1e-9);
    for (int blank : new int[] {3, 5, 6, 7, 8}) {
      assertTrue(page.rows().get(2).get(blank).value().orElseThrow().toString().matches("_+"));
    }
    assertTrue(String.join(" ", page.notes()).contains("water meter over ten minutes"));
  }

  /** What this plan's head has is carried in; a tank is emptied, and has no backflow preventer. */
  @Test
  void winter_namesThePartsOfThisHead() {
    String tap = notes(Drawn.of(THREE), "Winter");
    assertTrue(tap.contains("take timer, double check, filter, regulator indoors"), tap);
    assertTrue(tap.contains("Open the flush caps"), tap);
    assertFalse(tap.contains("Tank:"), tap);
    String tank =
        notes(
            Drawn.of(
                yard(
                    "roof 'shed', rect(30.m, 4.m, 6.m, 4.m), surface: 'metal'\n"
                        + "tank('butt', point(28.m, 5.m), roof: 'shed') {\n"
                        + "  round diameter: 1.m, height: 1.5.m\n  stand 1.m\n}\n"
                        + "supply tank: 'butt'\n"
                        + bed("greens", 9, 60))),
            "Winter");
    assertTrue(tank.contains("take timer, filter indoors"), tank);
    assertTrue(tank.contains("Tank: where it freezes hard, empty it"), tank);
  }
}
