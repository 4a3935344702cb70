package yardloom.program.cli;

import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Edits of a shipped plan's text, chosen by a number. */
final class DemoEdits {
  private static final Pattern LENGTH = Pattern.compile("(\\d+(?:\\.\\d+)?)\\.(ft|m|inch)\\b");
  private static final Pattern NAME = Pattern.compile("(?m)^(tree|bed|path|tap)\\(? ?'([^']+)'");

  private DemoEdits() {}

  /** The text with one thing changed: a length, a name, a line that comes or goes, the climate. */
  static String of(String text, int number) {
    return switch (number % 5) {
      case 0 -> withComment(text, number);
      case 1 -> replaced(text, NAME, number, m -> m.group().replace(m.group(2), m.group(2) + "x"));
      case 2 ->
          text.lines().filter(l -> !gone(l, number)).collect(Collectors.joining("\n", "", "\n"));
      default -> replaced(text, LENGTH, number, m -> longer(m, number));
    };
  }

  private static boolean gone(String line, int number) {
    return line.startsWith("tree '") && Math.floorMod(line.hashCode(), 3) == number % 3
        || line.startsWith("//") && Math.floorMod(line.hashCode(), 4) == number % 4;
  }

  private static String longer(MatchResult m, int number) {
    double value = Double.parseDouble(m.group(1)) * (0.9 + (number % 7) * 0.03);
    return String.format(Locale.ROOT, "%.2f.%s", value, m.group(2));
  }

  private static String withComment(String text, int number) {
    String[] lines = text.split("\n", -1);
    int at = 1 + number % 30;
    lines[at] = lines[at].startsWith(" ") ? lines[at] : "// edited\n" + lines[at];
    return String.join("\n", lines);
  }

  private static String replaced(
      String text, Pattern what, int number, java.util.function.Function<MatchResult, String> by) {
    long count = what.matcher(text).results().count();
    if (count == 0) {
      return text;
    }
    MatchResult chosen =
        what.matcher(text).results().skip(number % count).findFirst().orElseThrow();
    return text.substring(0, chosen.start()) + by.apply(chosen) + text.substring(chosen.end());
  }
}
