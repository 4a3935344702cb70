package yardloom.planting.window.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrySummerTest {
  private static final String NORTH = "1 2 3 4 5 6 7 6 5 4 3 2";
  private static final String SOUTH = "7 6 5 4 3 2 1 2 3 4 5 6";

  private static List<Double> list(String text) {
    return Arrays.stream(text.split(" ")).map(Double::parseDouble).toList();
  }

  /**
   * Rain of published normals in mm. San Francisco and Seattle lie in Csb, Urbana in Dfa of the
   * map: San Francisco's July has 1 mm, a third of January's 103 is 34; Urbana's driest warm month,
   * its September, has 79.5. The last ones stand at the limits: 40 is not less than 40, 30 not less
   * than a third of 90.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "San Francisco, 103 75 78 33 6 4 1 2 7 32 82 79, true",
    "Seattle, 141 89 94 69 49 40 18 22 38 88 167 136, true",
    "Urbana, 52 54 73 93 124 110 119 100 79.5 83 93 69, false",
    "Limit of 40, 200 75 78 60 50 45 40 42 47 52 82 79, false",
    "Below 40, 200 75 78 60 50 45 39 42 47 52 82 79, true",
    "Limit of a third, 90 75 78 60 50 45 30 42 47 52 82 79, false",
    "Below a third, 90 75 78 60 50 45 29 42 47 52 82 79, true",
  })
  void drySummer_isThatOfTheMap(String place, String rainMm, boolean expected) {
    assertEquals(expected, DrySummer.is(list(rainMm), list(NORTH)));
  }

  /** In the south summer is the other half: the same rain there falls in summer. */
  @ParameterizedTest
  @CsvSource({"103 75 78 33 6 4 1 2 7 32 82 79, false", "1 2 7 32 82 79 103 75 78 33 6 4, true"})
  void southernSummer_isTheOtherHalf(String rainMm, boolean expected) {
    assertEquals(expected, DrySummer.is(list(rainMm), list(SOUTH)));
  }

  /** April is the first month of the half year, September its last: dry there, or just outside. */
  @ParameterizedTest
  @CsvSource({
    "99 99 99 9 99 99 99 99 99 99 99 99, true",
    "99 99 99 99 99 99 99 99 9 99 99 99, true",
    "99 99 9 99 99 99 99 99 99 99 99 99, false",
    "99 99 99 99 99 99 99 99 99 9 99 99, false"
  })
  void dryMonth_countsFromAprilToSeptember(String rainMm, boolean expected) {
    assertEquals(expected, DrySummer.is(list(rainMm), list(NORTH)));
  }
}
