package yardloom.kernel.study;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.SheetPlan;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.OnPaper;
import yardloom.kernel.table.Reading;
import yardloom.kernel.table.Table;

/**
 * Everything that is known about a plan.
 *
 * @param findings sorted, errors first
 * @param tables sorted by id, empty ones left out
 * @param layers the layers of the site plan that have marks, in drawing order
 * @param sheets sheets that plugins offer
 * @param onPaper what makers say of their tables, by table id
 * @param readings whose tables they are and which charts go with them, by table id
 * @param sheetMakers who made each sheet, by its id
 */
public record Outcome(
    Plan plan,
    Results results,
    List<Finding> findings,
    List<Table> tables,
    SortedMap<Layer, DrawnLayer> layers,
    List<Caution> cautions,
    List<SheetPlan> sheets,
    Map<String, OnPaper> onPaper,
    Map<String, Reading> readings,
    Map<String, String> sheetMakers) {

  public Outcome {
    onPaper = Map.copyOf(onPaper);
    readings = Map.copyOf(readings);
    sheetMakers = Map.copyOf(sheetMakers);
  }

  /** The same but for these. */
  Outcome with(
      Plan other, Results facts, List<SheetPlan> some, SortedMap<Layer, DrawnLayer> drawn) {
    return new Outcome(
        other, facts, findings, tables, drawn, cautions, some, onPaper, readings, sheetMakers);
  }

  /** How the report shows a table. */
  public Reading reading(Table table) {
    return readings.getOrDefault(table.id(), Reading.PLAIN);
  }

  /** Whether some finding says that the plan must not be built so. */
  public boolean hasErrors() {
    return findings.stream().anyMatch(f -> f.severity() == Severity.ERROR);
  }
}
