package yardloom.program.output;

import java.time.MonthDay;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.kernel.geom.Point;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.Volume;

/**
 * Values of calculations as text: in the plan's units, with enough digits to work them out again by
 * hand.
 */
public final class ValueText {
  private static final String NO_BREAK_SPACE = "\u00a0";
  private static final double SHORT_M = 0.6;
  private static final int DIGITS = 4;
  private static final int LEAST_DECIMALS = 2;
  private static final int MOST_DECIMALS = 6;

  private final TableFormat format;

  private final Set<Object> water = Collections.newSetFromMap(new IdentityHashMap<>());

  public ValueText(TableFormat format) {
    this.format = format;
  }

  /** From now on this volume is told as water is sold, not as soil is. */
  void isWater(Volume volume) {
    water.add(volume);
  }

  /** A quantity in the plan's unit; a number with enough digits to reckon with. */
  public String of(Object value) {
    if (value instanceof Quantity<?> quantity) {
      return of(quantity);
    }
    if (value instanceof Double number) {
      return String.format(Locale.ROOT, "%.6g", number);
    }
    if (value instanceof MonthDay day) {
      return TableFormat.day(day);
    }
    return value instanceof List<?> points && points.stream().allMatch(Point.class::isInstance)
        ? points.stream().map(p -> of((Point) p)).collect(Collectors.joining(" ", "", unit()))
        : value.toString();
  }

  /**
   * The value of a cell; where its table has another unit than the formula, the table's number
   * comes first.
   */
  public String inTable(Column column, Cell cell, Object derived) {
    String exact = of(derived);
    String unit = format.unit(column);
    boolean isSame = !column.measure().isNumber() || unit.isEmpty() || exact.contains(unit);
    return isSame ? exact : format.text(column, cell) + " " + unit + ", from " + exact;
  }

  private String of(Quantity<?> quantity) {
    // Layer depths and spacings: a foot is too long to give the table's numbers back.
    boolean isShort = quantity instanceof Length length && Math.abs(length.metres()) < SHORT_M;
    boolean isWater = water.contains(quantity);
    Unit unit =
        isShort
            ? format.units().depthUnit()
            : isWater
                ? Measure.WATER.unit(format.units()).orElseThrow()
                : format.units().unit(quantity.dimension());
    double value = quantity.in(unit);
    if (unit == Unit.MONEY_UNIT || Math.abs(value) >= 10 && !isShort) {
      return isWater ? format.withUnit(Measure.SMALL_WATER, quantity) : format.withUnit(quantity);
    }
    // Two decimals of a small number would not do either.
    int more = value == 0 ? 0 : -(int) Math.floor(Math.log10(Math.abs(value)));
    int decimals = Math.min(Math.max(LEAST_DECIMALS, DIGITS - 1 + more), MOST_DECIMALS);
    return String.format(
        Locale.ROOT, "%." + decimals + "f%s%s", value, NO_BREAK_SPACE, unit.symbol());
  }

  private String of(Point point) {
    Unit unit = format.units().unit(Dimension.LENGTH);
    return String.format(Locale.ROOT, "(%.3f, %.3f)", point.x().in(unit), point.y().in(unit));
  }

  private String unit() {
    return NO_BREAK_SPACE + format.units().unit(Dimension.LENGTH).symbol();
  }
}
