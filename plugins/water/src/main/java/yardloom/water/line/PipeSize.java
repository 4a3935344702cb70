package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * A size of tube that is sold.
 *
 * @param bore inside
 * @param roll length that is sold in one piece
 * @param sleeve size of the pipe through which it passes under paving
 */
public record PipeSize(String name, Length bore, Length roll, String sleeve, Source source) {
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
                row.text("sleeve"),
                SOURCES.cited(row, "source")));
      }
    }
    return List.copyOf(sizes);
  }

  /**
   * What a length of it costs, as a measure to compare sizes by: pipe of one pressure class weighs
   * as the square of its width.
   */
  double cost(Length length) {
    return length.metres() * bore.metres() * bore.metres();
  }
}
