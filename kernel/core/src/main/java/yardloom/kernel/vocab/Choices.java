package yardloom.kernel.vocab;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** The texts that stand for the values of an enum: {@code CORNER_SIDE} is {@code 'corner side'}. */
public final class Choices {
  private Choices() {}

  public static String text(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  public static List<String> of(Class<? extends Enum<?>> type) {
    return Arrays.stream(type.getEnumConstants()).map(Choices::text).toList();
  }

  /**
   * The value that {@code text} names.
   *
   * @throws PlanException (UNKNOWN_WORD) without a place, if there is none
   */
  public static <E extends Enum<E>> E parse(Class<E> type, String text) {
    for (E value : type.getEnumConstants()) {
      if (text(value).equals(text)) {
        return value;
      }
    }
    throw new PlanException(
        ProblemCode.UNKNOWN_WORD,
        "'"
            + text
            + "' is not one of "
            + String.join(", ", of(type))
            + "."
            + Nearest.hint(text, of(type)));
  }

  /** The same, or {@code fallback} when nothing is given. */
  public static <E extends Enum<E>> E parse(Class<E> type, String text, E fallback) {
    return text == null ? fallback : parse(type, text);
  }
}
