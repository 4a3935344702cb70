package yardloom.program.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.fact.Appendix;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

/**
 * The calculation appendix as text: for every derived number of every table its formula, its source
 * and its inputs with the script line they were given on, so that it can be worked out again by
 * hand.
 */
final class CalculationsText {
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
    if (value instanceof Length length && Math.abs(length.metres()) < 0.6) {
      // Layer depths and spacings: two decimals of a foot would not give the table's numbers back.
      Unit unit = format.units().depthUnit();
      return String.format(Locale.ROOT, "%.2f %s", length.in(unit), unit.symbol());
    }
    if (value instanceof Quantity<?> quantity) {
      return format.withUnit(quantity);
    }
    if (value instanceof Double number) {
      return String.format(Locale.ROOT, "%.6g", number);
    }
    return value.toString();
  }
}
