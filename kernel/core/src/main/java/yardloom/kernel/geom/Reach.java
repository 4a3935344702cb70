package yardloom.kernel.geom;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import yardloom.kernel.unit.Length;

/**
 * The ground of a bed that nobody can reach by hand from beside it.
 *
 * <p>A gardener stands where there is room beside the bed: not where a wall, fence or another bed
 * is closer than {@code room}. Ground further than {@code reach} from every such stretch of the
 * edge is out of reach. With all sides free this is the bed eroded by the reach.
 */
public final class Reach {
  private Reach() {}

  /**
   * The ground out of reach; empty if all can be reached.
   *
   * @param blocked what stands beside the bed, or whatever else keeps people away
   */
  public static Shape beyond(Shape bed, List<Shape> blocked, Length reach, Length room) {
    Geometry edge = bed.jts().getBoundary();
    // Room that a strip of exactly the wanted width leaves must count as room.
    double keepM = room.metres() - 1e-6;
    for (Shape shape : blocked) {
      if (shape.distance(bed).metres() < keepM) {
        edge = Overlay.linesOutside(edge, Overlay.fineBuffer(shape.jts(), keepM));
      }
    }
    if (edge.isEmpty()) {
      return bed;
    }
    List<Geometry> reached = new ArrayList<>();
    for (int i = 0; i < edge.getNumGeometries(); i++) {
      reached.addAll(Around.pieces((LineString) edge.getGeometryN(i), reach.metres()));
    }
    return new Shape(Overlay.difference(bed.jts(), Overlay.unionAll(reached)));
  }
}
