package yardloom.program.explain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A formula with the values of its inputs in the places of their names. */
final class FormulaInNumbers {
  private FormulaInNumbers() {}

  /**
   * The right side of the formula with values put in; empty if no input is named there.
   *
   * @param values by name
   */
  static Optional<String> of(String formula, Map<String, String> values) {
    int equals = formula.indexOf(" = ");
    String right = equals < 0 ? formula : formula.substring(equals + 3);
    List<String> names =
        values.keySet().stream()
            .sorted((a, b) -> b.length() - a.length())
            .map(Pattern::quote)
            .toList();
    if (names.isEmpty()) {
      return Optional.empty();
    }
    Matcher found =
        Pattern.compile(
                "(?<![\\p{L}\\p{N}])("
                    + String.join("|", names)
                    + ")(?![\\p{L}\\p{N}])( in [^×/)+−,]+)?")
            .matcher(right);
    StringBuilder text = new StringBuilder();
    boolean any = false;
    while (found.find()) {
      any = true;
      String value = values.get(found.group(1));
      found.appendReplacement(text, Matcher.quoteReplacement(value + rest(value, found.group(2))));
    }
    found.appendTail(text);
    return any ? Optional.of(text.toString()) : Optional.empty();
  }

  /** "in sq ft" behind a value that is printed in sq ft says nothing. */
  private static String rest(String value, String in) {
    if (in == null) {
      return "";
    }
    String unit = in.substring(" in ".length());
    return value.endsWith(unit.strip()) ? unit.substring(unit.stripTrailing().length()) : in;
  }
}
