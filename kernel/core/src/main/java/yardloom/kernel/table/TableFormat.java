package yardloom.kernel.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.unit.Months;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;

/**
 * Turns cells into text in one unit system. Facts stay exact; only here are they rounded, half away
 * from zero, to the decimals of the column's {@link Measure}.
 *
 * <p>{@link #text} groups digits for reading (comma in US units, no-break space in metric); {@link
 * #plain} has the same digits without grouping, for machines. Neither depends on the machine's
 * locale.
 *
 * @param currency the sign printed in headings of money columns; may be empty
 */
public record TableFormat(UnitSystem units, String currency) {
  private static final char NO_BREAK_SPACE = '\u00a0';

  /** A thousand rows, each half a unit of the last digit off, are then off by a twentieth. */
  private static final int ADDED_DIGITS = 4;

  public TableFormat {
    Objects.requireNonNull(units);
    Objects.requireNonNull(currency);
  }

  /** The format of a plan: its units and its currency. */
  public static TableFormat of(PlanInfo plan) {
    return new TableFormat(plan.units(), plan.currency());
  }

  /** A day of the year, such as {@code 25 Apr}. */
  public static String day(MonthDay day) {
    return day.getDayOfMonth() + " " + Months.name(day.getMonth());
  }

  /** A date, such as {@code 16 Oct 2026}. */
  public static String date(LocalDate date) {
    return day(MonthDay.from(date)) + " " + date.getYear();
  }

  /** The heading with its unit, such as {@code Area, sq ft}. */
  public String header(Column column) {
    String unit = unit(column);
    return unit.isEmpty() ? title(column) : title(column) + ", " + unit;
  }

  /** The heading without its unit, beginning with a capital. */
  public static String title(Column column) {
    String title = column.title();
    int end = title.isEmpty() ? 0 : title.offsetByCodePoints(0, 1);
    return title.substring(0, end).toUpperCase(Locale.ROOT) + title.substring(end);
  }

  /** The unit that the column's numbers are shown in; empty if they have none. */
  public String unit(Column column) {
    return unitText(column.measure());
  }

  /** The column's id with its unit word, such as {@code area_sqft}. */
  public String csvHeader(Column column) {
    Optional<Unit> unit = column.measure().unit(units);
    if (column.measure() == Measure.PERCENT) {
      return column.id() + "_percent";
    }
    if (unit.isEmpty() || unit.get() == Unit.MONEY_UNIT) {
      return column.id();
    }
    return column.id() + "_" + unit.get().word();
  }

  private String unitText(Measure measure) {
    return switch (measure) {
      case PERCENT -> "%";
      case MONEY -> currency;
      default -> measure.unit(units).map(Unit::symbol).orElse("");
    };
  }

  /** The cell as it stands on a sheet; empty for a blank cell. */
  public String text(Column column, Cell cell) {
    return cell.value().map(v -> show(column.measure(), v, true)).orElse("");
  }

  /** The cell as it stands in a data file: the same digits, ungrouped. */
  public String plain(Column column, Cell cell) {
    return cell.value().map(v -> show(column.measure(), v, false)).orElse("");
  }

  /**
   * The cell as it stands in a table for machines: as {@link #plain}, but areas and shares with so
   * many more digits that hundreds of rows add up to what the whole has; zeros at the end are left
   * out.
   */
  public String data(Column column, Cell cell) {
    boolean added = column.measure() == Measure.AREA || column.measure() == Measure.PERCENT;
    String text =
        cell.value()
            .map(v -> show(column.measure(), v, false, added ? ADDED_DIGITS : 0))
            .orElse("");
    if (!added || text.isEmpty()) {
      return text;
    }
    BigDecimal bare = new BigDecimal(text).stripTrailingZeros();
    return bare.setScale(Math.max(bare.scale(), column.measure().decimals(units))).toPlainString();
  }

  /** A quantity with its unit symbol, in the unit and decimals of {@code measure}. */
  public String withUnit(Measure measure, Quantity<?> quantity) {
    String number = show(measure, quantity, true);
    String unit = unitText(measure);
    if (measure == Measure.MONEY) {
      return unit + number;
    }
    return unit.isEmpty() ? number : number + NO_BREAK_SPACE + unit;
  }

  /** The same for running text: no digits are grouped, and lines may break before the unit. */
  public String inText(Measure measure, Quantity<?> quantity) {
    String unit = unitText(measure);
    return show(measure, quantity, false) + (unit.isEmpty() ? "" : " " + unit);
  }

  /** A quantity with its unit symbol, in the plan's usual unit for its dimension. */
  public String withUnit(Quantity<?> quantity) {
    return outsideItsColumn(quantity, true);
  }

  private String show(Measure measure, Object value, boolean grouped) {
    return show(measure, value, grouped, 0);
  }

  private String show(Measure measure, Object value, boolean grouped, int moreDigits) {
    if (value instanceof Quantity<?> quantity) {
      Optional<Unit> unit = measure.unit(units);
      if (unit.isEmpty()) {
        return outsideItsColumn(quantity, grouped);
      }
      return digits(quantity.in(unit.get()), measure.decimals(units) + moreDigits, grouped);
    }
    if (value instanceof Number number) {
      double shown = measure == Measure.PERCENT ? number.doubleValue() * 100 : number.doubleValue();
      return digits(
          shown, (measure.isNumber() ? measure.decimals(units) : 2) + moreDigits, grouped);
    }
    if (grouped && value instanceof LocalDate date) {
      return date(date);
    }
    if (grouped && value instanceof MonthDay day) {
      return day(day);
    }
    // Dates for machines are those of ISO 8601, which their text is.
    return value.toString();
  }

  /** A quantity in a text column brings its own unit. */
  private String outsideItsColumn(Quantity<?> quantity, boolean grouped) {
    Unit unit = units.unit(quantity.dimension());
    String number = digits(quantity.in(unit), 2, grouped);
    return unit == Unit.MONEY_UNIT ? currency + number : number + NO_BREAK_SPACE + unit.symbol();
  }

  private String digits(double value, int decimals, boolean grouped) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a table cell holds " + value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    // BigDecimal has no negative zero, so "-0.0" cannot appear.
    String plain = rounded.toPlainString();
    return grouped ? group(plain) : plain;
  }

  private String group(String number) {
    char separator = units == UnitSystem.US ? ',' : NO_BREAK_SPACE;
    int first = number.startsWith("-") ? 1 : 0;
    int point = number.indexOf('.');
    int end = point < 0 ? number.length() : point;
    StringBuilder text = new StringBuilder(number);
    for (int i = end - 3; i > first; i -= 3) {
      text.insert(i, separator);
    }
    return text.toString();
  }
}
