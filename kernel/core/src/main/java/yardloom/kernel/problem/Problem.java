package yardloom.kernel.problem;

import java.util.Comparator;
import java.util.Objects;

/**
 * One thing that is wrong: where, what, what is allowed, and how to fix it.
 *
 * @param message one sentence or two, naming the value with its unit and what is allowed
 */
public record Problem(ProblemCode code, SourceRef place, String message)
    implements Comparable<Problem> {
  private static final Comparator<Problem> ORDER =
      Comparator.comparing(Problem::place)
          .thenComparing(Problem::code)
          .thenComparing(Problem::message);

  public Problem {
    Objects.requireNonNull(code);
    Objects.requireNonNull(place);
    if (message.isBlank()) {
      throw new IllegalArgumentException("a problem needs a message");
    }
    message = Abridged.of(message);
  }

  /** The same problem at {@code where}, unless it already knows its place. */
  public Problem at(SourceRef where) {
    return place.line() == 0 ? new Problem(code, where, message) : this;
  }

  @Override
  public int compareTo(Problem other) {
    return ORDER.compare(this, other);
  }

  /** {@code file:line:column: message [CODE]}. */
  @Override
  public String toString() {
    return place.before() + message + " [" + code + "]";
  }
}
