package yardloom.facts;

import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.WayNetwork;
import yardloom.kernel.geom.WaysFrom;

/**
 * The paths and hard surfaces along which things are carried.
 *
 * @param barrow those that a barrow can take
 * @param foot those that people can take
 * @param barriers what nobody carries through: walls, fences without their gates, the ground beyond
 *     the sides that neighbours share
 */
public record Ways(List<WayNetwork.Way> barrow, List<WayNetwork.Way> foot, List<Shape> barriers) {
  /** No way at all. */
  public static final Ways NONE = new Ways(List.of(), List.of(), List.of());

  public Ways {
    barrow = List.copyOf(barrow);
    foot = List.copyOf(foot);
    barriers = List.copyOf(barriers);
  }

  /** The shortest ways from a point, such as a gate. */
  public WaysFrom from(Point at) {
    return WaysFrom.gate(barrow, foot, at);
  }

  /** The shortest ways from the middle of {@code ground}, such as a spot for heaps. */
  public WaysFrom from(Shape ground) {
    return WaysFrom.heap(barrow, foot, ground);
  }
}
