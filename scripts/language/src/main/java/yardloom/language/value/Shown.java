package yardloom.language.value;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Map;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Quantity;

/** Values as texts and messages show them. */
public final class Shown {
  private Shown() {}

  public static String kind(Object value) {
    if (value == null) {
      return "nothing (null)";
    } else if (value instanceof Number) {
      return "a bare number";
    } else if (value instanceof Quantity<?> q) {
      return "a " + q.dimension().word();
    } else if (value instanceof String) {
      return "a text";
    } else if (value instanceof Boolean) {
      return "true or false";
    } else if (value instanceof Collection) {
      return "a list";
    }
    return value instanceof Map
        ? "a map"
        : "a " + value.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
  }

  /** A value as a text shows it. */
  public static String text(Object value) {
    StringBuilder made = new StringBuilder();
    write(made, value, 0);
    return made.toString();
  }

  private static void write(StringBuilder made, Object value, int depth) {
    Operators.fits(made.length(), "characters in a text");
    if (value instanceof String s) {
      made.append(s);
    } else if (value instanceof Double d) {
      made.append(number(d));
    } else if (value instanceof Collection<?> list) {
      shallow(depth);
      made.append('[');
      String comma = "";
      for (Object each : list) {
        made.append(comma);
        write(made, each, depth + 1);
        comma = ", ";
      }
      made.append(']');
    } else if (value instanceof Map<?, ?> map) {
      shallow(depth);
      made.append('[');
      String comma = "";
      for (Map.Entry<?, ?> each : map.entrySet()) {
        made.append(comma).append(each.getKey()).append(':');
        write(made, each.getValue(), depth + 1);
        comma = ", ";
      }
      made.append(']');
    } else if (value instanceof Quantity<?> q) {
      made.append(number(q.si())).append(' ').append(symbol(q));
    } else if (value instanceof Number || value instanceof Boolean || value == null) {
      made.append(value);
    } else {
      made.append(kind(value));
    }
  }

  private static void shallow(int depth) {
    if (depth > 3) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "a list of lists of lists is too deep to be shown as text");
    }
  }

  private static String symbol(Quantity<?> q) {
    String shown = q.toString();
    int blank = shown.indexOf(' ');
    return blank < 0 ? "" : shown.substring(blank + 1);
  }

  /** Twelve significant digits: enough for any plan, and free of binary noise. */
  private static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(12)).stripTrailingZeros();
    boolean plain = Math.abs(rounded.scale()) < 30;
    return plain ? rounded.toPlainString() : Double.toString(value);
  }
}
