package yardloom.sheet.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rounded by hand: decimal halves as written go away from zero. */
class SvgNumberTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.004, 0",
    "0.005, 0.01",
    "-0.005, -0.01",
    "1.005, 1.01",
    "1.0049999, 1",
    "2.675, 2.68",
    "17.3, 17.3",
    "-17.304, -17.3",
    "17.3099, 17.31",
    "99.996, 100",
    "1200, 1200",
    "123456789.127, 123456789.13",
  })
  void numbersHaveTwoDecimalsAtMost(double value, String written) {
    assertEquals(written, SvgXml.number(value));
  }
}
