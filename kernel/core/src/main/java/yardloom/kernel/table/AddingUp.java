package yardloom.kernel.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rounds numbers so that they add up to their rounded sum, for a short column over its total: each
 * is rounded down, and what is then missing goes, one unit of the last digit each, to those with
 * the largest remainders [1]; of equal ones to the earlier. No number is off by a whole unit.
 *
 * <p>None gives none. The sum is rounded as {@link TableFormat} does.
 *
 * <p>References: [1] The method of largest remainders, A. Hamilton, 1792, as by M. L. Balinski and
 * H. P. Young, Fair Representation, 2nd ed. 2001, chapter 2 (memory).
 */
public final class AddingUp {
  private AddingUp() {}

  /**
   * The numbers with so many decimals, in their order.
   *
   * @param numbers finite
   * @param sum what they add up to
   */
  public static List<BigDecimal> rounded(List<Double> numbers, double sum, int decimals) {
    BigDecimal missing = BigDecimal.valueOf(sum).setScale(decimals, RoundingMode.HALF_UP);
    List<BigDecimal> parts = new ArrayList<>();
    List<BigDecimal> rests = new ArrayList<>();
    for (double number : numbers) {
      BigDecimal exact = BigDecimal.valueOf(number);
      BigDecimal part = exact.setScale(decimals, RoundingMode.FLOOR);
      parts.add(part);
      rests.add(exact.subtract(part));
      missing = missing.subtract(part);
    }
    BigDecimal unit = BigDecimal.ONE.movePointLeft(decimals);
    IntStream.range(0, parts.size())
        .boxed()
        .sorted(Comparator.comparing(rests::get, Comparator.reverseOrder()))
        .limit(Math.max(0, missing.movePointRight(decimals).longValue()))
        .toList()
        .forEach(i -> parts.set(i, parts.get(i).add(unit)));
    return List.copyOf(parts);
  }
}
