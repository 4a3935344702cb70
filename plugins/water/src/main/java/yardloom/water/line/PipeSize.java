package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;
import yardloom.water.pipe.formula.PipeSpeed;

/**
 * A size of tube that is sold.
 *
 * @param bore inside
 * @param roll length that is sold in one piece
 */
public record PipeSize(String name, Length bore, Length roll, Source source) {
  private static final List<DataRow> ROWS = DataTable.shipped(PipeSize.class, "sizes.csv").rows();
  private static final SourceTable SOURCES = SourceTable.beside(PipeSize.class);

  /** From the narrowest to the widest. */
  public static List<PipeSize> all(UnitSystem units) {
    List<PipeSize> sizes = new ArrayList<>();
    for (DataRow row : ROWS) {
      if (row.text("units").equals(units == UnitSystem.US ? "us" : "metric")) {
        sizes.add(
            new PipeSize(
                row.text("size"),
                Length.millimetres(row.number("bore_mm")),
                Length.metres(row.number("roll_m")),
                SOURCES.cited(row, "source")));
      }
    }
    return List.copyOf(sizes);
  }

  /** The flow at which water in it reaches the usual limit of speed. */
  Derived<Flow> most() {
    double flow = PipeSpeed.flowM3s(PipeSpeed.LIMIT_MS, bore.metres());
    return Derived.by("π / 4 × bore^2 × way in a second / 1 s", source)
        .from("bore", bore)
        .from("way in a second", Length.metres(PipeSpeed.LIMIT_MS))
        .gives(Flow.cubicMetresPerSecond(flow));
  }

  /**
   * What a length of it costs, as a measure to compare sizes by: pipe of one pressure class weighs
   * as the square of its width.
   */
  double cost(Length length) {
    return length.metres() * bore.metres() * bore.metres();
  }
}
