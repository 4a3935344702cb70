package yardloom.facts;

import java.time.MonthDay;
import java.util.Objects;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Temperature;

/**
 * When frost is usual. Half of all years have a later frost in spring, half an earlier one in
 * autumn, unless the derivation says otherwise.
 *
 * @param lastOfSpring last day of spring with a minimum at or below {@code limit}
 * @param firstOfFall first day of autumn with such a minimum
 * @param limit what counts as frost
 */
public record FrostDates(
    Derived<MonthDay> lastOfSpring, Derived<MonthDay> firstOfFall, Temperature limit) {
  public FrostDates {
    Objects.requireNonNull(limit);
    if (lastOfSpring.value().equals(firstOfFall.value())) {
      throw new IllegalArgumentException(
          "last and first frost fall on one day, " + lastOfSpring.value());
    }
  }
}
