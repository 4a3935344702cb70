package yardloom.program.appendix;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One calculation of {@code calculations.txt}, as it stands there. */
record PrintedEntry(String head, String value, String formula, List<Input> inputs) {
  private static final Pattern HEAD = Pattern.compile("^\\[\\d+] (.*) = (.*)$");
  private static final Pattern FORMULA = Pattern.compile("^ {4}(\\S.*) {2}\\{\\d+}$");
  private static final Pattern INPUT = Pattern.compile("^ {6}(.*?) = (.*)$");
  private static final Pattern WHERE_FROM =
      Pattern.compile(" (\\[\\d+]|\\([^()]*(\\.groovy|\\.csv):\\d+(:\\d+)?\\))$");

  /** A line below a formula. */
  record Input(String name, String value) {}

  /** All calculations of an appendix. */
  static List<PrintedEntry> all(String appendix) {
    List<String> lines = appendix.lines().toList();
    int at = lines.indexOf("Calculations") + 1;
    List<PrintedEntry> entries = new ArrayList<>();
    while (at < lines.size() && !lines.get(at).equals("Sources")) {
      if (lines.get(at).isEmpty()) {
        at++;
        continue;
      }
      Matcher head = matched(HEAD, lines.get(at++));
      Matcher formula = matched(FORMULA, lines.get(at++));
      List<Input> inputs = new ArrayList<>();
      while (lines.get(at).startsWith("      ")) {
        Matcher input = matched(INPUT, lines.get(at++));
        inputs.add(new Input(input.group(1), WHERE_FROM.matcher(input.group(2)).replaceFirst("")));
      }
      entries.add(new PrintedEntry(head.group(), head.group(2), formula.group(1), inputs));
    }
    return entries;
  }

  private static Matcher matched(Pattern pattern, String line) {
    Matcher matcher = pattern.matcher(line);
    if (!matcher.matches()) {
      throw new IllegalArgumentException("not a line of an appendix: " + line);
    }
    return matcher;
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(head).append("\n    ").append(formula);
    inputs.forEach(i -> text.append("\n      ").append(i.name()).append(" = ").append(i.value()));
    return text.toString();
  }
}
