package yardloom.kernel.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.UnitSystem;

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
  /** Digits behind the last printed one; what is smaller is noise and decides nothing. */
  private static final int NOISE = 6;

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
      BigDecimal exact =
          BigDecimal.valueOf(number).setScale(decimals + NOISE, RoundingMode.HALF_UP);
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

  /**
   * The cells of a column over its total, as printed in money of the plan; the reason behind each
   * keeps all its digits.
   *
   * @param sum what they add up to
   */
  public static List<Cell> money(List<Derived<Money>> amounts, Money sum) {
    int decimals = Measure.MONEY.decimals(UnitSystem.US);
    List<BigDecimal> shown =
        rounded(amounts.stream().map(a -> a.value().amount()).toList(), sum.amount(), decimals);
    return IntStream.range(0, shown.size())
        .mapToObj(
            i ->
                new Cell(
                    Optional.of(Money.amount(shown.get(i).doubleValue())),
                    Optional.of(amounts.get(i))))
        .toList();
  }
}
