package yardloom.program.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownNumberTest {
  /** Differences by hand. */
  @ParameterizedTest
  @CsvSource({
    "'7.00 cu yd','9.50 cu yd',2.50",
    "'1,616\u00a0sq ft','1,600\u00a0sq ft',-16",
    "'1\u00a0200','900',-300",
    "'','12 kg',12",
    "'12 kg','',-12",
    "'-0.5','0.25',0.75",
    "'96','96',0"
  })
  void shownNumbers_differByHand(String old, String now, BigDecimal difference) {
    assertEquals(Optional.of(difference), ShownNumber.difference(old, now));
  }

  @ParameterizedTest
  @CsvSource({
    "'1 kg','1 lb'",
    "'full sun','3'",
    "'',''",
    "'25 Apr','3 cu yd'",
    "'0.3–0.7','0.4–0.8'"
  })
  void whatIsNoPairOfNumbers_hasNoDifference(String old, String now) {
    assertEquals(Optional.empty(), ShownNumber.difference(old, now));
  }

  @Test
  void sign_standsBeforeTheNumber() {
    assertEquals("+0.50 cu yd", ShownNumber.signed(new BigDecimal("0.50"), "7.00 cu yd"));
    assertEquals("−3", ShownNumber.signed(new BigDecimal("-3"), "9"));
    assertEquals("0", ShownNumber.signed(new BigDecimal("0"), "9"));
  }
}
