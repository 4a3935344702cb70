package yardloom.language.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Unit;

/** Both spellings of every unit are known; factors from NIST SP 811, Appendix B.8. */
class UnitSpellingsTest {
  @ParameterizedTest
  @CsvSource({
    "litre, 0.001",
    "liter, 0.001",
    "litres, 0.001",
    "liters, 0.001",
    "l, 0.001",
    "L, 0.001",
    "m2, 1",
    "m², 1",
    "sqm, 1",
    "ft2, 0.09290304",
    "ft², 0.09290304",
    "sqft, 0.09290304",
    "yd2, 0.83612736",
    "m³, 1",
    "cuyd, 0.764554857984",
    "cuft, 0.028316846592",
    "feet, 0.3048",
    "foot, 0.3048",
    "inches, 0.0254",
    "in, 0.0254",
    "yards, 0.9144",
    "metres, 1",
    "meters, 1",
    "pounds, 0.45359237",
    "lbs, 0.45359237",
    "gallons, 0.003785411784",
  })
  void spelling_meansTheUnit(String word, double si) {
    assertEquals(si, Unit.byWord(word).orElseThrow().toSi(1), si * 1e-12);
  }

  @Test
  void spellings_neverMeanTwoUnits() {
    Set<String> seen = new HashSet<>();
    for (Unit unit : Unit.values()) {
      assertTrue(seen.add(unit.word()), unit.word());
      unit.also().forEach(w -> assertTrue(seen.add(w), w));
    }
  }
}
