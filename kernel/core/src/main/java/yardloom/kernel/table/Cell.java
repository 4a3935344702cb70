package yardloom.kernel.table;

import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Quantity;

/**
 * One cell: text, a number, or a quantity, with its derivation if there is one.
 *
 * @param value a String, Number or Quantity; empty for a blank cell
 */
public record Cell(Optional<Object> value, Optional<Derived<?>> why) {
  /** Nothing to show. */
  public static final Cell BLANK = new Cell(Optional.empty(), Optional.empty());

  public static Cell text(String text) {
    return new Cell(Optional.of(text), Optional.empty());
  }

  public static Cell number(Number number) {
    return new Cell(Optional.of(number), Optional.empty());
  }

  public static Cell of(Quantity<?> quantity) {
    return new Cell(Optional.of(quantity), Optional.empty());
  }

  /** A derived quantity or number; the cell keeps the reason. */
  public static Cell of(Derived<?> derived) {
    return new Cell(Optional.of(derived.value()), Optional.of(derived));
  }
}
