package yardloom.water.timetable;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.kernel.unit.Length;

/** How much water may stand on the ground before it runs off, by texture and slope. */
final class SurfaceStorage {
  private static final List<DataRow> ROWS =
      DataTable.shipped(SurfaceStorage.class, "surface-storage.csv").rows();
  private static final SourceTable SOURCES = SourceTable.beside(SurfaceStorage.class);

  private SurfaceStorage() {}

  /**
   * The depth; that of clay where the texture has no row.
   *
   * @param slope rise over run, 0 where nothing is known
   */
  static Derived<Length> of(String texture, double slope) {
    DataRow row =
        ROWS.stream()
            .filter(r -> r.text("texture").equals(texture))
            .findFirst()
            .orElse(ROWS.get(ROWS.size() - 1));
    String column =
        slope <= 0.03 ? "to_3_in" : slope <= 0.06 ? "to_6_in" : slope <= 0.12 ? "to_12_in" : "above_in";
    Source source = SOURCES.cited(row, "source");
    return Derived.by("typical storage on the surface for texture and slope", source)
        .gives(Length.inches(row.number(column)));
  }
}
