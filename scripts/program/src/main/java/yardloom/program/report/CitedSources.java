package yardloom.program.report;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;

/** The sources that findings, cautions and the cells of tables rest on, each once, sorted. */
final class CitedSources {
  private final SortedSet<String> cites = new TreeSet<>();

  private CitedSources() {}

  static List<String> of(Outcome outcome) {
    CitedSources found = new CitedSources();
    outcome.findings().forEach(f -> found.add(f.source()));
    outcome.cautions().forEach(c -> found.add(c.source()));
    for (Table table : outcome.tables()) {
      for (List<Cell> row : table.rows()) {
        row.forEach(cell -> cell.why().ifPresent(found::add));
      }
    }
    return List.copyOf(found.cites);
  }

  private void add(Source source) {
    if (source.standing() != Source.Standing.PLAN) {
      cites.add(source.cite());
    }
  }

  private void add(Derived<?> derived) {
    add(derived.source());
    for (Derived.Input input : derived.inputs()) {
      if (input.value() instanceof Derived<?> inner) {
        add(inner);
      }
    }
  }
}
