package yardloom.program.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Expectations: the formulas read with the values by hand. */
class FormulaInNumbersTest {
  @Test
  void namesOfInputs_areReplacedByTheirValues_theLongerNameFirst() {
    assertEquals(
        Optional.of("12 m² × 3 cm"),
        FormulaInNumbers.of("volume = area × depth", Map.of("area", "12 m²", "depth", "3 cm")));
    assertEquals(
        Optional.of("$40 × 7 + $5"),
        FormulaInNumbers.of(
            "price of a bag × 7 + price", Map.of("price of a bag", "$40", "price", "$5")));
  }

  @Test
  void partsOfWords_stay() {
    assertEquals(
        Optional.of("2 + overload"), FormulaInNumbers.of("load + overload", Map.of("load", "2")));
  }

  @Test
  void unitThatTheValueIsPrintedIn_isNotSaidTwice() {
    assertEquals(
        Optional.of("8 sq ft × 2"),
        FormulaInNumbers.of("area in sq ft × rate", Map.of("area", "8 sq ft", "rate", "2")));
    assertEquals(
        Optional.of("8 sq ft in m² × 2"),
        FormulaInNumbers.of("area in m² × rate", Map.of("area", "8 sq ft", "rate", "2")));
  }

  @Test
  void formulaThatNamesNoInput_hasNoNumbers() {
    assertEquals(Optional.empty(), FormulaInNumbers.of("sum over surfaces", Map.of("bed", "2")));
    assertEquals(Optional.empty(), FormulaInNumbers.of("one", Map.of()));
  }
}
