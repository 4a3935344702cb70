package yardloom.kernel.study;

import java.util.List;
import java.util.function.Function;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Caution;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.TableMaker;

/** What is applied to every plan whichever plugins are loaded: the kernel's own offers. */
public record Toolbox(
    List<Check> checks,
    List<Painter> painters,
    List<TableMaker> tables,
    List<SheetMaker> sheets,
    Function<Plan, List<Caution>> cautions) {
  /** Nothing of its own. */
  public static final Toolbox EMPTY =
      new Toolbox(List.of(), List.of(), List.of(), List.of(), plan -> List.of());

  public Toolbox {
    checks = List.copyOf(checks);
    painters = List.copyOf(painters);
    tables = List.copyOf(tables);
    sheets = List.copyOf(sheets);
  }
}
