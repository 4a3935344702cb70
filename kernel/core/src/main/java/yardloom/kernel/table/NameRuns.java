package yardloom.kernel.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says numbered names that follow each other in one, such as {@code kitchen 1 to 5}. */
public final class NameRuns {
  private static final Pattern NUMBERED = Pattern.compile("(.*\\D)([1-9]\\d{0,3})");
  private static final int SHORTEST_RUN = 3;

  private NameRuns() {}

  /** A name that ends in a number. */
  private record Numbered(String stem, int number) {
    static Optional<Numbered> of(String name) {
      Matcher parts = NUMBERED.matcher(name);
      return parts.matches()
          ? Optional.of(new Numbered(parts.group(1), Integer.parseInt(parts.group(2))))
          : Optional.empty();
    }
  }

  /** The names with commas between, in their order; three or more that count up are one. */
  public static String text(List<String> names) {
    List<String> said = new ArrayList<>();
    int i = 0;
    while (i < names.size()) {
      int end = endOfRun(names, i);
      if (end - i >= SHORTEST_RUN) {
        said.add(names.get(i) + " to " + Numbered.of(names.get(end - 1)).orElseThrow().number());
        i = end;
      } else {
        said.add(names.get(i++));
      }
    }
    return String.join(", ", said);
  }

  private static int endOfRun(List<String> names, int from) {
    Optional<Numbered> first = Numbered.of(names.get(from));
    int end = from + 1;
    while (first.isPresent()
        && end < names.size()
        && names.get(end).equals(first.get().stem() + (first.get().number() + end - from))) {
      end++;
    }
    return end;
  }
}
