package yardloom.kernel.study;

import java.util.List;
import yardloom.kernel.check.Check;
import yardloom.kernel.draw.Painter;
import yardloom.kernel.draw.SheetMaker;
import yardloom.kernel.table.TableMaker;

/** What is applied to every plan whichever plugins are loaded: the kernel's own offers. */
public record Toolbox(
    List<Check> checks, List<Painter> painters, List<TableMaker> tables, List<SheetMaker> sheets) {
  public Toolbox {
    checks = List.copyOf(checks);
    painters = List.copyOf(painters);
    tables = List.copyOf(tables);
    sheets = List.copyOf(sheets);
  }
}
