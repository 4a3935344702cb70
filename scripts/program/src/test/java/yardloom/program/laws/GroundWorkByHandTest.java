package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Lime that the soil test asks for and swales are bought, worked and phased, by hand. */
class GroundWorkByHandTest {
  private static final String YARD =
      """
      plan 'Ground', units: 'us'
      lot([point(0.ft, 0.ft), point(60.ft, 0.ft), point(60.ft, 60.ft), point(0.ft, 60.ft)])
      soilTexture 'clay loam', organic: 2.2, depth: 21.inch
      soilTest { acidity ph: 5.2, wanted: 6.2, limePurity: 80 }
      price 'ground limestone', 0.5.money, per: 'lb'
      price 'labour', 31.money, per: 'h'
      bed 'a', rect(5.ft, 5.ft, 5.ft, 30.ft), use: 'annual'
      bed 'b', rect(25.ft, 5.ft, 7.ft, 22.ft), use: 'perennial'
      swale 'low side', line([point(5.ft, 50.ft), point(45.ft, 50.ft)]), bottom: 2.ft, depth: 9.inch, sides: 3
      """;

  /**
   * As in the worked yard of the soil: 99 lb of pure lime on 1000 sq ft by the published table, on
   * 304 sq ft 30.1 lb, at 80 % 37.62 lb; at 0.50 a pound 18.81. By hand at 0.002 h a square foot
   * 0.608 h, on the mown ground before it is soaked.
   */
  @Test
  void lime_isOrderedSpreadAndPaidFor() {
    Drawn yard = Drawn.of(YARD);
    int at = yard.texts("materials-orders-by-phase", "item").indexOf("ground limestone");
    assertTrue(at >= 0, yard.texts("materials-orders-by-phase", "item").toString());
    assertEquals("Soak the ground", yard.texts("materials-orders-by-phase", "phase").get(at));
    assertEquals(18.81, yard.exact("materials-cost", "ground limestone", "likely"), 0.01);
    assertEquals(
        304 * 0.002, yard.exact("materials-labour", "spread lime or sulfur", "likely"), 1e-6);
    List<String> tasks = yard.texts("materials-labour", "task");
    assertTrue(tasks.indexOf("spread lime or sulfur") < tasks.indexOf("soak the ground"));
    assertTrue(tasks.indexOf("mow low") < tasks.indexOf("spread lime or sulfur"));
  }

  /** The swale is dug in the phase of earthwork; nobody is asked to count it again. */
  @Test
  void swale_isCountedWhereItIsDug() {
    Drawn yard = Drawn.of(YARD);
    assertEquals("dig swales and cuts by hand", yard.printed("work-elements", "Low side", "done"));
    assertEquals("Earthwork", yard.printed("work-elements", "Low side", "phases"));
    assertEquals("", yard.printed("work-elements", "Low side", "why"));
  }
}
