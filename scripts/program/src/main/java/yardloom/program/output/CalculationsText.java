package yardloom.program.output;

import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yardloom.kernel.fact.Appendix;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.geom.Point;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * The calculation appendix as text: for every derived number of every table its formula, its source
 * and its inputs with the script line they were given on, so that it can be worked out again by
 * hand.
 */
final class CalculationsText {
  private static final String NO_BREAK_SPACE = "\u00a0";
  private static final double SHORT_M = 0.6;
  private static final int DIGITS = 4;
  private static final int LEAST_DECIMALS = 2;
  private static final int MOST_DECIMALS = 6;

  private final TableFormat format;
  private final Appendix appendix = new Appendix(this::show);
  private final StringBuilder text = new StringBuilder();

  private CalculationsText(TableFormat format) {
    this.format = format;
  }

  /** The numbers of the tables first, then the calculations they point at, then the sources. */
  static String of(Outcome outcome, TableFormat format) {
    CalculationsText writer = new CalculationsText(format);
    writer.text.append("Calculations of ").append(outcome.plan().info().title()).append('\n');
    outcome.tables().forEach(writer::table);
    writer.calculations();
    return writer.text.toString();
  }

  private void table(Table table) {
    boolean headed = false;
    for (List<Cell> row : table.rows()) {
      for (int i = 0; i < row.size(); i++) {
        Optional<Derived<?>> why = row.get(i).why();
        if (why.isEmpty()) {
          continue;
        }
        if (!headed) {
          text.append('\n').append(table.title()).append('\n');
          headed = true;
        }
        String about = format.text(table.columns().get(0), row.get(0));
        String name = i == 0 ? about : about + ", " + table.columns().get(i).title();
        text.append("  ").append(name).append(": ");
        text.append(shown(table.columns().get(i), row.get(i), show(why.get().value())));
        text.append(" [").append(appendix.add(name, why.get())).append("]\n");
      }
    }
  }

  /** Where the table has another unit than the formula, its number comes first. */
  private String shown(Column column, Cell cell, String exact) {
    String unit = format.unit(column);
    boolean isSame = !column.measure().isNumber() || unit.isEmpty() || exact.contains(unit);
    return isSame ? exact : format.text(column, cell) + " " + unit + ", from " + exact;
  }

  private void calculations() {
    text.append("\nCalculations\n");
    for (Appendix.Entry entry : appendix.entries()) {
      text.append("[").append(entry.number()).append("] ").append(entry.name());
      text.append(" = ").append(entry.value()).append("\n    ").append(entry.formula());
      text.append("  {").append(entry.source()).append("}\n");
      for (String input : entry.inputs()) {
        text.append("      ").append(input).append('\n');
      }
    }
    text.append("\nSources\n");
    for (int i = 0; i < appendix.sources().size(); i++) {
      text.append("{").append(i + 1).append("} ").append(appendix.sources().get(i)).append('\n');
    }
  }

  /** A quantity in the plan's unit; a number with enough digits to reckon with. */
  private String show(Object value) {
    if (value instanceof Quantity<?> quantity) {
      return show(quantity);
    }
    if (value instanceof Double number) {
      return String.format(Locale.ROOT, "%.6g", number);
    }
    if (value instanceof MonthDay day) {
      return TableFormat.day(day);
    }
    return value instanceof List<?> points && points.stream().allMatch(Point.class::isInstance)
        ? points.stream().map(p -> show((Point) p)).collect(Collectors.joining(" ", "", unit()))
        : value.toString();
  }

  private String show(Quantity<?> quantity) {
    // Layer depths and spacings: a foot is too long to give the table's numbers back.
    boolean isShort = quantity instanceof Length length && Math.abs(length.metres()) < SHORT_M;
    Unit unit = isShort ? format.units().depthUnit() : format.units().unit(quantity.dimension());
    double value = quantity.in(unit);
    if (unit == Unit.MONEY_UNIT || Math.abs(value) >= 10 && !isShort) {
      return format.withUnit(quantity);
    }
    // Two decimals of a small number would not do either.
    int more = value == 0 ? 0 : -(int) Math.floor(Math.log10(Math.abs(value)));
    int decimals = Math.min(Math.max(LEAST_DECIMALS, DIGITS - 1 + more), MOST_DECIMALS);
    return String.format(
        Locale.ROOT, "%." + decimals + "f%s%s", value, NO_BREAK_SPACE, unit.symbol());
  }

  private String show(Point point) {
    Unit unit = format.units().unit(Dimension.LENGTH);
    return String.format(Locale.ROOT, "(%.3f, %.3f)", point.x().in(unit), point.y().in(unit));
  }

  private String unit() {
    return NO_BREAK_SPACE + format.units().unit(Dimension.LENGTH).symbol();
  }
}
