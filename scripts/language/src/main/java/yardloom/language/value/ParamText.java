package yardloom.language.value;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;
import yardloom.language.text.Hidden;

/** Reads the text of {@code --set NAME=VALUE} as a value of the same type as the default. */
public final class ParamText {
  private static final Pattern QUANTITY =
      Pattern.compile("([-+]?[0-9]*\\.?[0-9]+(?:[eE][-+]?[0-9]+)?)[ .]?\\s*(\\S.*?)?");

  private ParamText() {}

  public static Object read(String name, String text, Object fallback) {
    String value = text.strip();
    if (fallback instanceof String) {
      Hidden.in(text)
          .ifPresent(
              what -> {
                throw new PlanException(
                    ProblemCode.FORBIDDEN, "the parameter `" + name + "`: " + what);
              });
      return text;
    } else if (fallback instanceof Boolean) {
      return switch (value.toLowerCase(Locale.ROOT)) {
        case "true", "yes" -> true;
        case "false", "no" -> false;
        default -> throw wrong(name, "true or false", text);
      };
    } else if (fallback instanceof Integer) {
      try {
        return Integer.valueOf(value);
      } catch (NumberFormatException e) {
        throw wrong(name, "a whole number", text);
      }
    } else if (fallback instanceof Number) {
      try {
        double number = Double.parseDouble(value);
        if (Double.isFinite(number) && !value.matches(".*[dDfF]")) {
          return number;
        }
      } catch (NumberFormatException e) {
        // falls through to the message
      }
      throw wrong(name, "a number", text);
    } else if (fallback instanceof Quantity<?> quantity) {
      return quantity(name, value, quantity);
    }
    throw new PlanException(
        ProblemCode.WRONG_TYPE,
        "the parameter `"
            + name
            + "` holds "
            + Shown.kind(fallback)
            + " and cannot be set from outside");
  }

  private static Object quantity(String name, String text, Quantity<?> fallback) {
    String wanted =
        "a " + fallback.dimension().word() + ", such as " + fallback.dimension().example();
    Matcher parts = QUANTITY.matcher(text);
    if (!parts.matches()) {
      throw wrong(name, wanted, text);
    }
    if (parts.group(2) == null) {
      throw wrong(name, wanted, text + " (a bare number; give a unit)");
    }
    Optional<Unit> unit = unit(parts.group(2));
    if (unit.isEmpty() || unit.get().dimension() != fallback.dimension()) {
      throw wrong(name, wanted, text);
    }
    double number = Double.parseDouble(parts.group(1));
    return Quantity.of(number, unit.get());
  }

  /** The quantity that {@code text} says, such as {@code 4 ft}; empty if it says none. */
  public static Optional<Quantity<?>> quantity(String text) {
    Matcher parts = QUANTITY.matcher(text);
    if (!parts.matches() || parts.group(2) == null) {
      return Optional.empty();
    }
    double number = Double.parseDouble(parts.group(1));
    return unit(parts.group(2))
        .filter(u -> Double.isFinite(u.toSi(number)))
        .map(u -> Quantity.of(number, u));
  }

  private static Optional<Unit> unit(String text) {
    return Unit.byWord(text)
        .or(() -> Arrays.stream(Unit.values()).filter(u -> u.symbol().equals(text)).findFirst());
  }

  private static PlanException wrong(String name, String wanted, String got) {
    return new PlanException(
        ProblemCode.WRONG_TYPE,
        "the parameter `"
            + name
            + "` needs "
            + wanted
            + "; got "
            + (got.isBlank() ? "nothing" : got));
  }
}
