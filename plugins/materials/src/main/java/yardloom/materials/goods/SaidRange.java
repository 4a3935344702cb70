package yardloom.materials.goods;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * Lengths that make sense, said in round figures of both systems. The figures differ a little, and
 * whoever takes a limit at its word, in either system, is right: {@code least} is the lesser of the
 * two said, {@code most} the greater.
 *
 * @param us such as {@code 2 to 40 ft}
 * @param metric such as {@code 0.6 to 12.2 m}
 */
record SaidRange(Length least, Length most, String us, String metric) {
  boolean holds(Length length) {
    return length.compareTo(least) >= 0 && length.compareTo(most) <= 0;
  }

  /** Both, that of the plan first: {@code 0.6 to 12.2 m (2 to 40 ft)} in a metric plan. */
  String in(UnitSystem units) {
    return units.both(us, metric);
  }
}
