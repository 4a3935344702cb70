package yardloom.materials.goods.formula;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.geom.RectangleSides;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * The boards of a frame whose outer faces stand on the outline of a bed.
 *
 * <p>A rectangle takes two sides over the full length and two ends between them, shorter by twice
 * the board's thickness. Any other outline takes its sides at full length, to be mitred or butted.
 * A side longer than the stock is parted into equal pieces that meet at a stake. Holes are framed
 * too; sides below a thickness of the board (chords of curves) cannot be framed and are left out:
 * bend an edging there.
 *
 * <p>References: plane geometry; joints as is common practice.
 */
public final class FramePieces {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.commonPractice("butted frame: ends stand between the sides");

  private FramePieces() {}

  /** Lengths of all boards of one course. */
  public static List<Length> of(Shape outline, Length thickness, Length stock) {
    List<Length> sides = new ArrayList<>();
    for (Shape part : outline.parts()) {
      var rectangle = RectangleSides.of(part);
      if (rectangle.isPresent()) {
        Length inner = rectangle.get().width().minus(thickness.times(2));
        for (int i = 0; i < 2; i++) {
          sides.add(rectangle.get().length());
          if (inner.metres() > 0) {
            sides.add(inner);
          }
        }
      } else {
        part.polygons().forEach(p -> sides.addAll(edges(p)));
      }
    }
    List<Length> boards = new ArrayList<>();
    for (Length side : sides) {
      if (side.compareTo(thickness) > 0) {
        int pieces = (int) Math.ceil(side.ratioTo(stock) - 1e-9);
        for (int i = 0; i < pieces; i++) {
          boards.add(side.div(pieces));
        }
      }
    }
    return boards;
  }

  private static List<Length> edges(Polygon polygon) {
    List<Length> edges = new ArrayList<>(ring(polygon.getExteriorRing().getCoordinates()));
    for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
      edges.addAll(ring(polygon.getInteriorRingN(i).getCoordinates()));
    }
    return edges;
  }

  private static List<Length> ring(Coordinate[] ring) {
    List<Length> edges = new ArrayList<>();
    for (int i = 1; i < ring.length; i++) {
      edges.add(Length.metres(ring[i - 1].distance(ring[i])));
    }
    return edges;
  }

  /** Screws of one corner and course: one for each 2 in of nominal width, at least two. */
  public static int screwsPerCorner(double nominalWidthIn) {
    return Math.max(2, (int) Math.ceil(nominalWidthIn / 2));
  }

  /** Stakes along boards: one at each end of a board and every 4 ft between, ends shared. */
  public static int stakes(List<Length> boards) {
    int stakes = 0;
    for (Length board : boards) {
      stakes += Math.max(1, (int) Math.ceil(board.feet() / 4 - 1e-9));
    }
    return stakes;
  }
}
