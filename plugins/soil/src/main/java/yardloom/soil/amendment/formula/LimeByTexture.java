package yardloom.soil.amendment.formula;

import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.vocab.Choices;
import yardloom.soil.texture.formula.TextureClass;

/**
 * Ground limestone by texture and pH, where no buffer pH is known.
 *
 * <p>A table has what brings soils of each pH from 4.0 to 6.0 to 6.5; between its rows lime runs
 * straight. Another target is the difference of two rows, above 6.5 at the rate of the last half
 * unit; below 4.0 the row of 4.0 holds. Acid soils take more for each unit than sweet ones, which
 * one figure a unit hides. A target below the present pH is OUT_OF_RANGE; the same pH needs
 * nothing.
 *
 * <p>References: [1] agroconection.com, Raising pH with limestone, pounds per 100 square feet
 * (secondary, read). [2] Arkansas garden-centre copy of an Extension chart, pH 4.5 (secondary,
 * read): sand 50, loam 130, clay 190 lb on 1000 sq ft; the sands follow [2] along the course of
 * sandy loam in [1], and loam and clay of both lie within 4 percent.
 */
public final class LimeByTexture {
  private static final DataTable TABLE = DataTable.shipped(LimeByTexture.class, "lime-to-ph65.csv");
  private static final Area THOUSAND = Area.squareFeet(1000);
  private static final double TARGET = 6.5;

  private LimeByTexture() {}

  /** The columns of the table, coarse to fine. */
  public enum Ground {
    SAND,
    SANDY_LOAM,
    LOAM,
    CLAY_LOAM
  }

  /** The column for a texture class. */
  public static Ground ground(TextureClass texture) {
    return switch (texture) {
      case SAND, LOAMY_SAND -> Ground.SAND;
      case SANDY_LOAM -> Ground.SANDY_LOAM;
      case LOAM, SILT_LOAM, SILT -> Ground.LOAM;
      default -> Ground.CLAY_LOAM;
    };
  }

  /** Who gives the figures of a column. */
  public static Source source(Ground ground) {
    return rows(ground).get(0).source();
  }

  /** Pure carbonate to bring {@code area} from {@code phNow} to {@code phWanted}. */
  public static Mass lime(double phNow, double phWanted, Ground ground, Area area) {
    if (!(phWanted >= phNow && phNow >= 3 && phWanted <= 8.5)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "lime raises the pH: the wanted pH must lie between the present "
              + phNow
              + " and 8.5, got "
              + phWanted);
    }
    double lbPerThousand = toTarget(phNow, ground) - toTarget(phWanted, ground);
    return Mass.pounds(lbPerThousand * area.ratioTo(THOUSAND));
  }

  /** Pounds on 1000 sq ft to 6.5; below zero beyond it. */
  private static double toTarget(double ph, Ground ground) {
    List<DataRow> rows = rows(ground);
    double pastPh = ph(rows.get(0));
    double past = pounds(rows.get(0));
    if (ph <= pastPh) {
      return past;
    }
    for (DataRow row : rows.subList(1, rows.size())) {
      if (ph <= ph(row)) {
        return past + (ph - pastPh) / (ph(row) - pastPh) * (pounds(row) - past);
      }
      pastPh = ph(row);
      past = pounds(row);
    }
    return past * (TARGET - ph) / (TARGET - pastPh);
  }

  private static List<DataRow> rows(Ground ground) {
    return TABLE.rows().stream()
        .filter(r -> r.text("texture").equals(Choices.text(ground)))
        .toList();
  }

  private static double ph(DataRow row) {
    return row.number("ph");
  }

  private static double pounds(DataRow row) {
    return row.number("lb_1000sqft");
  }
}
