package yardloom.program.compare;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A cell that shows something else.
 *
 * @param old what it showed; empty if there was no such row
 * @param now what it shows; empty if there is no such row
 */
record FigureChange(ResultGrid table, String row, ResultGrid.Head column, String old, String now) {
  /** New less old, if both are numbers of one unit. */
  Optional<BigDecimal> difference() {
    return ShownNumber.difference(old, now);
  }

  /** The difference with sign and unit; empty text if there is none. */
  String differenceText() {
    return difference().map(d -> ShownNumber.signed(d, now.isEmpty() ? old : now)).orElse("");
  }
}
