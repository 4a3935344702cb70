package yardloom.kernel.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class DimensionTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "24.5|24'-6\"",
        "24.5416667|24'-6½\"",
        "60|60'-0\"",
        "8.0208334|8'-0¼\"",
        "0.5|6\"",
        "0.0208334|¼\"",
        "11.999|12'-0\"",
        "11.98|11'-11¾\"",
        "0|0\"",
        "-3.25|-3'-3\""
      })
  void us_length_readsAsFeetAndInches(double feet, String text) {
    assertEquals(text, DimensionText.of(Length.feet(feet), UnitSystem.US));
  }

  @Test
  void metric_length_hasTwoDecimals() {
    assertEquals("18.29 m", DimensionText.of(Length.feet(60), UnitSystem.METRIC));
    assertEquals("0.30 m", DimensionText.of(Length.metres(0.3), UnitSystem.METRIC));
  }

  @Property(seed = "20261125")
  void us_text_isWithinAnEighthOfAnInch(@ForAll @DoubleRange(min = 1, max = 500) double feet) {
    String text = DimensionText.of(Length.feet(feet), UnitSystem.US);
    String[] parts = text.replace("\"", "").split("'-");
    String inches = parts[1].replace("¼", ".25").replace("½", ".5").replace("¾", ".75");
    double read = Double.parseDouble(parts[0]) + Double.parseDouble(inches) / 12;
    assertEquals(feet, read, 0.125 / 12 + 1e-9);
  }
}
