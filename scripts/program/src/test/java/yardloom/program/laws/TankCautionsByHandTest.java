package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;

/**
 * What is said of a tank's weight, stand and dangers, and its years of made-up rain, from plan text
 * to the printed tables; no two inputs are equal. Sources: geometry; 1 kg a litre; 9.80665 m/s².
 */
class TankCautionsByHandTest {
  private static final String YARD =
      """
      plan 'Barrel', units: 'metric', currency: 'EUR'
      site 'Urbana', latitude: 40.1.deg, longitude: -88.2.deg, elevation: 222.m, zone: 'America/Chicago'
      climate 'urbana-il'
      lot([point(0.m, 0.m), point(20.m, 0.m), point(20.m, 15.m), point(0.m, 15.m)])
      roof 'back', rect(1.m, 2.m, 9.m, 5.m), surface: 'metal'
      tank('barrel', point(12.m, 4.m), roof: 'back') {
        box width: 80.cm, depth: %s.cm, height: 1.6.m
        stand 70.cm
        serves(['berries'])
      }
      tap 'bib', point(1.m, 9.m)
      bed('berries', rect(2.m, 10.m, 6.m, 2.m), use: 'perennial') {
        plant 'red raspberry'
        drip emitter: 2.lph, spacing: 33.cm, rowSpacing: 45.cm
      }
      """;

  private static List<String> tips(Drawn drawn) {
    return drawn.outcome().findings().stream()
        .filter(f -> f.rule().equals("water.tank"))
        .map(Finding::text)
        .filter(text -> text.contains("tip"))
        .toList();
  }

  /**
   * 0.8 × 0.6 × 1.6 m hold 768 L, 768 kg on 0.48 m²: 1.6 × 9.80665 = 15.7 kPa. The middle of the
   * water is 0.7 + 0.8 = 1.5 m up, 2.5 times the foot's lesser side. On the ground it is 0.8 m up,
   * as high as the foot is wide.
   */
  @Test
  void tallTank_weighsAndTips() {
    Drawn drawn = Drawn.of(YARD.formatted("60"));
    assertEquals("768", drawn.printed("tanks", "barrel", "weight"));
    assertEquals("16", drawn.printed("tanks", "barrel", "pressure"));
    assertEquals(0.48, drawn.exact("tanks", "barrel", "foot"), 1e-9);
    assertEquals(1, tips(drawn).size());
    assertTrue(tips(drawn).get(0).contains("2.5 times"), tips(drawn).get(0));
    String low = YARD.formatted("85").replace("stand 70.cm\n", "\n");
    assertEquals(List.of(), tips(Drawn.of(low)));
  }

  /** Footing, tipping, mosquitoes, drinking water, frost and leave are each said with the tank. */
  @Test
  void tank_saysItsDangers() {
    Drawn drawn = Drawn.of(YARD.formatted("60"));
    String notes = drawn.tables().get("tanks").notes().toString();
    for (String word :
        List.of(
            "compacted gravel",
            "strap tall tanks",
            "mosquitoes",
            "lid against children",
            "air gap above the rim",
            "before hard frost",
            "permit",
            "limits collecting rain")) {
      assertTrue(notes.contains(word), word + " in " + notes);
    }
    String cautions =
        Drawn.plugins().all().stream()
            .flatMap(p -> p.cautions(drawn.outcome().plan(), drawn.outcome().results()).stream())
            .map(c -> c.text())
            .toList()
            .toString();
    assertTrue(cautions.contains("1 kg a litre"), cautions);
    assertTrue(cautions.contains("backflow preventer"), cautions);
    assertTrue(cautions.contains("not for drinking"), cautions);
  }

  /**
   * Where only normals are given, 30 years are made from them. A use above all rain draws whatever
   * comes in, so the mean year brings the year's normal rain on 45 m² × 0.95 × 0.87, within what
   * thirty years of the generator stray (5 percent); dry years bring less than wet ones, and a
   * second run the same.
   */
  @Test
  void madeUpRain_keepsTheNormalsOfTheYear() {
    String thirsty =
        YARD.formatted("61")
            .replace(
                "serves(['berries'])",
                "serves(['berries'])\n  otherUse 3000.l\n  inlet firstFlush: 0.mm, screened: 0.87");
    Drawn drawn = Drawn.of(thirsty);
    double rain = 0;
    for (String month : drawn.rows("water-by-month").subList(0, 12)) {
      rain += 1000 * drawn.exact("water-by-month", month, "rain");
    }
    double comes = rain * 45 * 0.95 * 0.87;
    double used = 1000 * drawn.exact("tank-sizes", "20000", "used");
    assertEquals(comes, used, 0.05 * comes);
    double dry = drawn.exact("tank-sizes", "20000", "met-dry");
    double usual = drawn.exact("tank-sizes", "20000", "met-usual");
    double wet = drawn.exact("tank-sizes", "20000", "met-wet");
    assertTrue(dry < usual && usual < wet && wet < 0.2, dry + " " + usual + " " + wet);
    String notes = drawn.tables().get("tank-sizes").notes().toString();
    assertTrue(notes.contains("30 years of rain made from the normals"), notes);
    assertEquals(
        drawn.csv().get("tank-sizes"), Drawn.of(thirsty + "\n// again\n").csv().get("tank-sizes"));
  }
}
