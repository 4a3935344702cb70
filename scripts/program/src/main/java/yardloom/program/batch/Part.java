package yardloom.program.batch;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * A part of the list, so that several machines share it: each takes every n-th lot.
 *
 * @param number from 1 to {@code of}
 */
public record Part(int number, int of) {
  /** All lots. */
  public static final Part WHOLE = new Part(1, 1);

  private static final Pattern TEXT = Pattern.compile("([1-9][0-9]{0,5})/([1-9][0-9]{0,5})");

  /** The part that a text such as {@code 2/5} names; empty if it names none. */
  public static Optional<Part> read(String text) {
    Matcher part = TEXT.matcher(text);
    if (!part.matches()) {
      return Optional.empty();
    }
    int number = Integer.parseInt(part.group(1));
    int of = Integer.parseInt(part.group(2));
    return number > of ? Optional.empty() : Optional.of(new Part(number, of));
  }

  /** Its lots, in the order of the list. */
  public <T> List<T> of(List<T> all) {
    return IntStream.range(0, all.size())
        .filter(i -> i % of == number - 1)
        .mapToObj(all::get)
        .toList();
  }

  /** The file name of its summary. */
  public String summary() {
    return of == 1 ? "summary.csv" : "summary-" + number + "-of-" + of + ".csv";
  }
}
