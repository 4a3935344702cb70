package yardloom.soil.texture;

import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Length;
import yardloom.soil.texture.formula.TextureClass;

/**
 * How fast a wet soil goes on taking in water, by texture: the basic infiltration rate that
 * irrigation is designed for.
 *
 * <p>The table has five classes; another takes the row of the slower of its neighbours. Saturated
 * conductivity is two to three times as high, since air, crust and packing hold water back.
 *
 * <p>References: [1] Brouwer and others, Irrigation Water Management, Training manual 5, FAO, Annex
 * 2, as quoted on a question-and-answer page (sandy loam 20 to 30, loam 10 to 20, clay loam 5 to
 * 10, clay 1 to 5 mm/h); sand above 30 from memory.
 *
 * @param low depth in an hour, of the slowest soil of the class
 */
public record BasicIntake(Length low, Source source) {
  private static final DataTable TABLE = DataTable.shipped(BasicIntake.class, "basic-intake.csv");

  /** Of any class. */
  public static BasicIntake of(TextureClass texture) {
    DataRow row = TABLE.row("texture", row(texture));
    return new BasicIntake(Length.millimetres(row.number("low_mm")), row.source());
  }

  private static String row(TextureClass texture) {
    return switch (texture) {
      case SAND -> "sand";
      case LOAMY_SAND, SANDY_LOAM -> "sandy loam";
      case LOAM, SILT_LOAM, SILT -> "loam";
      case SANDY_CLAY_LOAM, CLAY_LOAM, SILTY_CLAY_LOAM -> "clay loam";
      case SANDY_CLAY, SILTY_CLAY, CLAY -> "clay";
    };
  }
}
