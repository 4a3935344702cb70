package yardloom.language.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * The shortest text that reads back as exactly the same quantity: {@code 18 inch} rather than
 * {@code 0.4572 m}. Of texts of one length the SI unit goes first, then the others by name.
 */
public final class Exact {
  /** More digits than this are no figure that somebody wrote. */
  private static final int DIGITS = 7;

  private Exact() {}

  /** The quantity and its text. */
  public static Value.Measure of(Quantity<?> quantity) {
    List<String> texts = new ArrayList<>();
    for (Unit unit : Unit.of(quantity.dimension())) {
      double in = quantity.in(unit);
      if (unit.toSi(1) == 1) {
        texts.add(0, text(in, unit));
      } else {
        double rounded = new BigDecimal(in).round(new java.math.MathContext(DIGITS)).doubleValue();
        if (unit.toSi(rounded) == quantity.si()) {
          texts.add(text(rounded, unit));
        }
      }
    }
    String best = texts.stream().min(Comparator.comparingInt(String::length)).orElseThrow();
    return new Value.Measure(quantity, best);
  }

  /** {@code 40 ft}, {@code 2.5 m}; a whole number without its point. */
  public static String text(double value, Unit unit) {
    String digits = Double.toString(value);
    return (digits.endsWith(".0") ? digits.substring(0, digits.length() - 2) : digits)
        + " "
        + unit.word();
  }
}
