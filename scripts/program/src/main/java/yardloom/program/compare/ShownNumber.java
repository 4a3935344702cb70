package yardloom.program.compare;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a table shows it, with what stands behind it. Differences are those of the shown
 * numbers, so that old and difference add up to new on paper.
 */
record ShownNumber(BigDecimal value, String unit) {
  private static final Pattern NUMBER =
      Pattern.compile("(-?[0-9][0-9,\u00a0]*(?:\\.[0-9]+)?)(?:[ \u00a0](\\p{L}.*))?");
  private static final Pattern GROUPING = Pattern.compile("[,\u00a0](?=[0-9]{3})");

  /** Empty if the text is no number; nothing at all is none of anything. */
  static Optional<ShownNumber> read(String text) {
    if (text.isEmpty()) {
      return Optional.of(new ShownNumber(BigDecimal.ZERO, ""));
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.matches()) {
      return Optional.empty();
    }
    try {
      String digits = GROUPING.matcher(number.group(1)).replaceAll("");
      return Optional.of(
          new ShownNumber(new BigDecimal(digits), number.group(2) == null ? "" : number.group(2)));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  /** New less old; empty if one is no number or they have different units. */
  static Optional<BigDecimal> difference(String old, String now) {
    Optional<ShownNumber> a = read(old);
    Optional<ShownNumber> b = read(now);
    if (a.isEmpty() || b.isEmpty() || old.isEmpty() && now.isEmpty()) {
      return Optional.empty();
    }
    boolean same = old.isEmpty() || now.isEmpty() || a.get().unit().equals(b.get().unit());
    return same ? Optional.of(b.get().value().subtract(a.get().value())) : Optional.empty();
  }

  /** With its sign and the unit of {@code like}, such as {@code +0.50 cu yd}. */
  static String signed(BigDecimal difference, String like) {
    String unit = read(like).map(ShownNumber::unit).orElse("");
    String sign = difference.signum() > 0 ? "+" : difference.signum() < 0 ? "−" : "";
    return sign + difference.abs().toPlainString() + (unit.isEmpty() ? "" : " " + unit);
  }
}
