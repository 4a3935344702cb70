package yardloom.kernel.table;

import java.util.Optional;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;

/** What a column shows: decides unit and decimals for either unit system. */
public enum Measure {
  TEXT(null, null, 0, 0),
  COUNT(null, null, 0, 0),
  /** A plain number with two decimals. */
  RATIO(null, null, 2, 2),
  /** A share, shown in percent. */
  PERCENT(null, null, 0, 0),
  LENGTH(Unit.FOOT, Unit.METRE, 1, 2),
  /** Distances of which a limit is tested: setbacks, levels. */
  FINE_LENGTH(Unit.FOOT, Unit.METRE, 2, 2),
  /** Layer depths, spacings, diameters. */
  DEPTH(Unit.INCH, Unit.CENTIMETRE, 1, 1),
  /** Widths and spacings as a tape in the yard is read. */
  WIDTH(Unit.INCH, Unit.CENTIMETRE, 0, 0),
  /** Bores of small tube. */
  BORE(Unit.INCH, Unit.MILLIMETRE, 2, 1),
  /** Widths of pipe as they are sold. */
  PIPE(Unit.INCH, Unit.MILLIMETRE, 1, 0),
  AREA(Unit.SQUARE_FOOT, Unit.SQUARE_METRE, 0, 1),
  /** The ground by which something is over a limit. */
  FINE_AREA(Unit.SQUARE_FOOT, Unit.SQUARE_METRE, 1, 2),
  VOLUME(Unit.CUBIC_YARD, Unit.CUBIC_METRE, 2, 2),
  WATER(Unit.GALLON, Unit.LITRE, 0, 0),
  /** Water of a single watering, poured or timed. */
  SMALL_WATER(Unit.GALLON, Unit.LITRE, 1, 0),
  RAIN(Unit.INCH, Unit.MILLIMETRE, 2, 0),
  /** Rain or evapotranspiration of a single day. */
  DAILY_DEPTH(Unit.INCH, Unit.MILLIMETRE, 2, 1),
  MASS(Unit.POUND, Unit.KILOGRAM, 0, 0),
  FLOW(Unit.GALLON_PER_MINUTE, Unit.LITRE_PER_HOUR, 2, 0),
  SMALL_FLOW(Unit.GALLON_PER_HOUR, Unit.LITRE_PER_HOUR, 1, 1),
  /** What one outlet gives, as it is sold. */
  OUTLET_FLOW(Unit.GALLON_PER_HOUR, Unit.LITRE_PER_HOUR, 2, 1),
  PRESSURE(Unit.POUND_PER_SQUARE_INCH, Unit.KILOPASCAL, 1, 0),
  /** What a regulator is sold for. */
  SET_PRESSURE(Unit.POUND_PER_SQUARE_INCH, Unit.KILOPASCAL, 0, 0),
  TEMPERATURE(Unit.FAHRENHEIT, Unit.CELSIUS, 1, 1),
  HOURS(Unit.HOUR, Unit.HOUR, 1, 1),
  DAYS(Unit.DAY, Unit.DAY, 1, 1),
  MONEY(Unit.MONEY_UNIT, Unit.MONEY_UNIT, 0, 0);

  private final Unit us;
  private final Unit metric;
  private final int usDecimals;
  private final int metricDecimals;

  Measure(Unit us, Unit metric, int usDecimals, int metricDecimals) {
    this.us = us;
    this.metric = metric;
    this.usDecimals = usDecimals;
    this.metricDecimals = metricDecimals;
  }

  /** The display unit; empty for text, counts and shares. */
  public Optional<Unit> unit(UnitSystem system) {
    return Optional.ofNullable(system == UnitSystem.US ? us : metric);
  }

  public int decimals(UnitSystem system) {
    return system == UnitSystem.US ? usDecimals : metricDecimals;
  }

  /** Whether columns of this measure align right. */
  public boolean isNumber() {
    return this != TEXT;
  }
}
