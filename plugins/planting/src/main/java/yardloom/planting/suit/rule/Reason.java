package yardloom.planting.suit.rule;

import java.util.Objects;
import yardloom.kernel.source.Source;

/**
 * Why a plant does not simply fit.
 *
 * @param rule what was asked, in a word such as {@code light}
 * @param suits never {@link Suits#FITS}
 * @param text what is so, with value, unit and limit
 * @param todo the condition under which it fits, or what else to do
 */
public record Reason(String rule, Suits suits, String text, String todo, Source source) {
  public Reason {
    Objects.requireNonNull(source);
    if (suits == Suits.FITS || text.isBlank() || todo.isBlank()) {
      throw new IllegalArgumentException("a reason says what is wrong and what to do: " + rule);
    }
  }
}
