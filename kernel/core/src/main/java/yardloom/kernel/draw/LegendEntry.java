package yardloom.kernel.draw;

import java.util.Optional;

/**
 * One line of a legend.
 *
 * @param symbol drawn instead of a swatch when present
 * @param ring of the circle about the symbol, if the drawing has one
 */
public record LegendEntry(
    String text,
    Style style,
    Optional<Mark.SymbolForm> symbol,
    boolean isLine,
    Optional<Style> ring) {
  public static LegendEntry area(String text, Style style) {
    return new LegendEntry(text, style, Optional.empty(), false, Optional.empty());
  }

  public static LegendEntry line(String text, Style style) {
    return new LegendEntry(text, style, Optional.empty(), true, Optional.empty());
  }

  public static LegendEntry symbol(String text, Mark.SymbolForm form, Style style) {
    return new LegendEntry(text, style, Optional.of(form), false, Optional.empty());
  }

  /** A symbol in a circle that is drawn about it. */
  public static LegendEntry ringed(String text, Mark.SymbolForm form, Style style, Style ring) {
    return new LegendEntry(text, style, Optional.of(form), false, Optional.of(ring));
  }

  /** The same under another text. */
  public LegendEntry called(String newText) {
    return new LegendEntry(newText, style, symbol, isLine, ring);
  }
}
