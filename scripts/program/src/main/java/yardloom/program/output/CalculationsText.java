package yardloom.program.output;

import yardloom.kernel.fact.Appendix;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;

/**
 * The calculation appendix as text: for every derived number of every table its formula, its source
 * and its inputs with the script line they were given on, so that it can be worked out again by
 * hand.
 */
final class CalculationsText {
  private final Calculations calculations;
  private final StringBuilder text = new StringBuilder();

  private CalculationsText(Calculations calculations) {
    this.calculations = calculations;
  }

  /** The numbers of the tables first, then the calculations they point at, then the sources. */
  static String of(Outcome outcome, TableFormat format) {
    CalculationsText writer = new CalculationsText(Calculations.of(outcome, format));
    writer.text.append("Calculations of ").append(outcome.plan().info().title()).append('\n');
    writer.tables();
    writer.calculations();
    return writer.text.toString();
  }

  private void tables() {
    Table headed = null;
    for (Calculations.Printed printed : calculations.printed()) {
      if (printed.table() != headed) {
        headed = printed.table();
        text.append('\n').append(headed.title()).append('\n');
      }
      text.append("  ").append(printed.name()).append(": ").append(printed.value());
      text.append(" [").append(printed.number()).append("]\n");
    }
  }

  private void calculations() {
    text.append("\nCalculations\n");
    for (Appendix.Entry entry : calculations.entries()) {
      text.append("[").append(entry.number()).append("] ").append(entry.name());
      text.append(" = ").append(entry.value()).append("\n    ").append(entry.formula());
      text.append("  {").append(entry.source()).append("}\n");
      for (String input : entry.inputs()) {
        text.append("      ").append(input).append('\n');
      }
    }
    text.append("\nSources\n");
    for (int i = 0; i < calculations.sources().size(); i++) {
      text.append("{")
          .append(i + 1)
          .append("} ")
          .append(calculations.sources().get(i))
          .append('\n');
    }
  }
}
