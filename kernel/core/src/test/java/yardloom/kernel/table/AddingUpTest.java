package yardloom.kernel.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class AddingUpTest {
  private static String rounded(int decimals, Double... numbers) {
    double sum = List.of(numbers).stream().mapToDouble(Double::doubleValue).sum();
    return AddingUp.rounded(List.of(numbers), sum, decimals).toString();
  }

  /**
   * An election by the method, from a public page on it (read): 500, 300, 110 and 20 votes of 930
   * for 4 seats are 2.15, 1.29, 0.47 and 0.09 quotas of 232.5: 2, 1, 1 and 0 seats. Another (read):
   * 50, 30 and 20 of 100 for 7 seats have the quotas 3.5, 2.1 and 1.4, which leave one seat after
   * 3, 2 and 1: by the method it goes to the first.
   */
  @Test
  void votes_becomeTheSeatsOfPublishedExamples() {
    assertEquals("[2, 1, 1, 0]", rounded(0, 500 / 232.5, 300 / 232.5, 110 / 232.5, 20 / 232.5));
    assertEquals("[4, 2, 1]", rounded(0, 3.5, 2.1, 1.4));
  }

  /** 14.0325 + 15.6698 = 29.7023; 0.66 + 0.87 + 0.28 = 1.81, though 0.7 + 0.9 + 0.3 is 1.9. */
  @Test
  void numbers_thatAddUp_areRoundedAsEver_othersByTheLargestRemainder() {
    assertEquals("[14.0, 15.7]", rounded(1, 14.0325, 15.6698));
    assertEquals("[0.6, 0.9, 0.3]", rounded(1, 0.66, 0.87, 0.28));
    assertEquals("[0.8]", rounded(1, 0.75), "half up, as tables do");
    assertEquals("[]", rounded(1));
  }

  /** Two halves that came by different sums stay in their order, whatever the last bits are. */
  @Test
  void noise_decidesNothing() {
    assertEquals("[2, 1]", rounded(0, 1.5 - 1e-12, 1.5 + 1e-12));
    assertEquals("[2, 1]", rounded(0, 1.5 + 1e-12, 1.5 - 1e-12));
    assertEquals("[2, 1]", rounded(0, 2 - 1e-12, 1 + 1e-12));
  }

  @Property(tries = 300, seed = "1407")
  void parts_addUpToTheRoundedSum(
      @ForAll @Size(min = 1, max = 9) List<@DoubleRange(min = 0, max = 999) Double> numbers) {
    double sum = numbers.stream().mapToDouble(Double::doubleValue).sum();
    List<BigDecimal> parts = AddingUp.rounded(numbers, sum, 1);
    assertEquals(
        BigDecimal.valueOf(sum).setScale(1, RoundingMode.HALF_UP),
        parts.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    for (int i = 0; i < parts.size(); i++) {
      assertTrue(Math.abs(parts.get(i).doubleValue() - numbers.get(i)) < 0.1 + 1e-9, "" + numbers);
    }
  }
}
