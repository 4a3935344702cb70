package yardloom.program.compare;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A cell that shows something else.
 *
 * @param old what it showed; empty if there was no such row
 * @param now what it shows; empty if there is no such row
 */
record FigureChange(Grid table, String row, Grid.Head column, String old, String now) {
  /** New less old, if both are numbers of one unit. */
  Optional<BigDecimal> difference() {
    return Shown.difference(old, now);
  }

  /** The difference with sign and unit; empty text if there is none. */
  String differenceText() {
    return difference().map(d -> Shown.signed(d, now.isEmpty() ? old : now)).orElse("");
  }
}
