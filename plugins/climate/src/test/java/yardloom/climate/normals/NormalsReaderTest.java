package yardloom.climate.normals;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.climate.normals.NormalsReader.Units;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.source.Source;

class NormalsReaderTest {
  private static final Source SOURCE = Source.plan("a weather service");

  private static List<?> row(Number value) {
    return Collections.nCopies(12, value);
  }

  private static ClimateNormals read(List<?> rain, List<?> max, List<?> min, Units units) {
    return NormalsReader.read("somewhere", rain, max, min, units, SOURCE);
  }

  private static String refused(List<?> rain, List<?> max, List<?> min) {
    return assertThrows(PlanException.class, () -> read(rain, max, min, Units.MM_CELSIUS))
        .getMessage();
  }

  /** 1 in is 25.4 mm, 50 °F are 10 °C and 68 °F are 20 °C, by definition. */
  @Test
  void bothUnits_giveTheSameClimate() {
    ClimateNormals metric = read(row(25.4), row(20), row(10), Units.MM_CELSIUS);
    ClimateNormals us = read(row(1), row(68), row(50), Units.INCH_FAHRENHEIT);
    for (ClimateNormals normals : List.of(metric, us)) {
      ClimateNormals.Month july = normals.months().get(6);
      assertEquals(25.4, july.rain().millimetres(), 1e-9);
      assertEquals(15, july.mean().celsius(), 1e-9);
      assertEquals(20, july.dailyMax().orElseThrow().celsius(), 1e-9);
      assertEquals(10, july.dailyMin().orElseThrow().celsius(), 1e-9);
    }
  }

  @Test
  void wrongRows_nameRowMonthAndWhatIsAllowed() {
    assertTrue(refused(List.of(1, 2), row(20), row(10)).contains("`rain:` takes 12 values"));
    assertTrue(refused(row(-1), row(20), row(10)).contains("`rain:` of Jan must be 0 to 4000 mm"));
    assertTrue(refused(row(50), row(68), row(10)).contains("-60 to 55 °C, got 68.0"), "°F as °C");
    assertTrue(refused(row(50), row(20), row(Double.NaN)).contains("`min:` of Jan must be"));
    assertTrue(refused(row(50), row(10), row(20)).contains("is above `max:`, 10.0"));
    assertTrue(
        refused(row(50), row(20), Collections.nCopies(12, "cold")).contains("plain numbers"));
    assertTrue(
        assertThrows(
                PlanException.class,
                () -> read(row(1), row(-500), row(-600), Units.INCH_FAHRENHEIT))
            .getMessage()
            .contains("-76 to 131 °F"));
  }
}
