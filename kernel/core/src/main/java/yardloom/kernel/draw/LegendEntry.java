package yardloom.kernel.draw;

import java.util.Optional;

/**
 * One line of a legend.
 *
 * @param symbol drawn instead of a swatch when present
 */
public record LegendEntry(
    String text, Style style, Optional<Mark.SymbolForm> symbol, boolean isLine) {
  public static LegendEntry area(String text, Style style) {
    return new LegendEntry(text, style, Optional.empty(), false);
  }

  public static LegendEntry line(String text, Style style) {
    return new LegendEntry(text, style, Optional.empty(), true);
  }

  public static LegendEntry symbol(String text, Mark.SymbolForm form, Style style) {
    return new LegendEntry(text, style, Optional.of(form), false);
  }
}
