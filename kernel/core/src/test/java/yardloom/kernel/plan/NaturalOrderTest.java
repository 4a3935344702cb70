package yardloom.kernel.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beds in the order in which a gardener counts them. */
class NaturalOrderTest {
  private static final NaturalOrder ORDER = new NaturalOrder();

  @ParameterizedTest
  @CsvSource({
    "bed 2, bed 10",
    "bed 9, bed 10",
    "bed 19, bed 20",
    "bed, bed 1",
    "bed 1, bed 1a",
    "a2b10, a10b2",
    "a2b9, a2b10",
    "bed 007, bed 8",
    "bed 07, bed 7",
    "bed 0, bed 1",
    "bed 00, bed 1",
    "1, a",
    "a9, b1",
    "a9z, b1",
    "9, 10",
    "'', a"
  })
  void first_comesBeforeSecond(String first, String second) {
    assertTrue(ORDER.compare(first, second) < 0);
    assertTrue(ORDER.compare(second, first) > 0);
  }

  @Test
  void equalNames_areEqual_andAListIsSorted() {
    assertEquals(0, ORDER.compare("bed 10", "bed 10"));
    assertEquals(
        List.of("b1", "b2", "b11", "b20", "b100"),
        List.of("b100", "b20", "b2", "b11", "b1").stream().sorted(ORDER).toList());
  }

  /** More digits than any number type holds. */
  @Test
  void longNumbers_areComparedDigitByDigit() {
    assertTrue(ORDER.compare("x99999999999999999998", "x99999999999999999999") < 0);
  }
}
