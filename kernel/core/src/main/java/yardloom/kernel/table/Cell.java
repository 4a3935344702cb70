package yardloom.kernel.table;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Quantity;

/**
 * One cell: text, a number, a quantity or a date, with its derivation if there is one.
 *
 * @param value a String, Number, Quantity, LocalDate or MonthDay; empty for a blank cell
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

  /** A date; how it is written the place decides, paper or file. */
  public static Cell of(LocalDate date) {
    return new Cell(Optional.of(date), Optional.empty());
  }

  /** A day of any year. */
  public static Cell of(MonthDay day) {
    return new Cell(Optional.of(day), Optional.empty());
  }

  /** A derived quantity or number; the cell keeps the reason. */
  public static Cell of(Derived<?> derived) {
    return new Cell(Optional.of(derived.value()), Optional.of(derived));
  }
}
