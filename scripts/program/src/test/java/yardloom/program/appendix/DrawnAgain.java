package yardloom.program.appendix;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Draws a printed percentile again: plain random draws of triangular factors, with another seed and
 * another way of drawing than the program's, from the low, likely and high that are printed.
 *
 * <p>Quantile of the triangular distribution: a + √(u (b − a) (c − a)) up to its peak, b − √((1 −
 * u) (b − a) (b − c)) beyond (any table of distributions).
 */
final class DrawnAgain {
  private static final Pattern FORMULA =
      Pattern.compile("(\\d+)th percentile of units × (.*), each triangular");
  private static final int DRAWS = 20_000;

  /** Two thousand samples of the program and these leave a percentile so uncertain. */
  private static final double UNCERTAIN = 0.03;

  private DrawnAgain() {}

  static boolean draws(PrintedEntry entry) {
    return FORMULA.matcher(entry.formula()).matches();
  }

  static Interval value(PrintedEntry entry) {
    Matcher formula = FORMULA.matcher(entry.formula());
    if (!formula.matches()) {
      throw new IllegalArgumentException("not drawn: " + entry.formula());
    }
    double[] products = new double[DRAWS];
    Arrays.fill(products, number(entry, "units"));
    SplittableRandom random = new SplittableRandom(99);
    for (String factor : formula.group(2).split(" × ")) {
      double low = number(entry, factor + ", low");
      double likely = number(entry, factor + ", likely");
      double high = number(entry, factor + ", high");
      for (int i = 0; i < DRAWS; i++) {
        products[i] *= triangular(low, likely, high, random.nextDouble());
      }
    }
    Arrays.sort(products);
    double at = products[DRAWS * Integer.parseInt(formula.group(1)) / 100];
    return new Interval(at * (1 - UNCERTAIN), at * (1 + UNCERTAIN));
  }

  private static double triangular(double low, double likely, double high, double share) {
    double width = high - low;
    if (width == 0) {
      return likely;
    }
    return share < (likely - low) / width
        ? low + Math.sqrt(share * width * (likely - low))
        : high - Math.sqrt((1 - share) * width * (high - likely));
  }

  private static double number(PrintedEntry entry, String name) {
    return entry.inputs().stream()
        .filter(i -> i.name().equals(name) || i.name().startsWith(name + ", of "))
        .map(i -> PrintedNumber.read(i.value()).orElseThrow())
        .mapToDouble(i -> (i.low() + i.high()) / 2)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no " + name + " in " + entry));
  }
}
