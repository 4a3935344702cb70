package yardloom.sun.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;

/** Light classes: rows I08 to I10, and on which side a border lies. */
class LightSchemesTest {
  private static final OutsideRows ROWS =
      OutsideRows.of(LightSchemesTest.class, "/yardloom/sun/sun-checks.csv");

  @ParameterizedTest(name = "{0}: {2} h is {3} by {1}")
  @CsvSource({
    "I08, six four, 6.1, full sun",
    "I08, six four, 6, part sun",
    "I08, six four, 5, part sun",
    "I08, six four, 3.9, shade",
    "I09, six three, 6.1, full sun",
    "I09, six three, 6, full sun",
    "I09, six three, 5, part shade",
    "I09, six three, 2.9, shade",
    "I10, four way, 5, part sun",
    "I10, four way, 3, part shade",
    "I10, four way, 1.5, full shade",
    "practice, temperate, 6.5, part sun",
    "practice, hot, 6.5, full sun",
    "practice, hot, 5.5, full sun",
    "practice, hot, 5.4, part sun",
    "practice, hot, 3.5, part sun",
    "practice, hot, 3.4, part shade",
    "practice, hot, 1.9, shade",
    "practice, temperate, 7, full sun",
    "practice, temperate, 4, part sun",
    "practice, temperate, 3.9, part shade",
    "practice, temperate, 1.9, shade"
  })
  void hours_haveTheirClass(String id, String scheme, double hours, String lightClass) {
    String got = LightSchemes.named(scheme).of(hours).name();
    assertEquals(lightClass, got, id);
    if (id.startsWith("I")) {
      ROWS.same(id, hours + " h", lightClass, got);
    }
  }

  @Test
  void everyScheme_saysItsLimitsAndItsSource() {
    for (String name : LightSchemes.names()) {
      assertTrue(LightSchemes.named(name).text().contains(" h"), name);
      assertTrue(LightSchemes.named(name).source().cite().contains("no source"), name);
    }
  }

  @Test
  void misspeltScheme_isAnsweredWithTheNearest() {
    PlanException e = assertThrows(PlanException.class, () -> LightSchemes.named("temparate"));
    assertTrue(e.getMessage().contains("Did you mean `temperate`?"), e.getMessage());
  }
}
