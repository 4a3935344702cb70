package yardloom.facts;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.WayNetwork;
import yardloom.kernel.geom.WaysFrom;

/**
 * The paths and hard surfaces along which things are carried. The networks from a start are laid
 * once for all who ask for them.
 */
public final class Ways {
  /** No way at all. */
  public static final Ways NONE = new Ways(List.of(), List.of(), List.of());

  private final WaysFrom.Ground ground;
  private final List<Shape> barriers;

  /** What was laid; no part of the value, since it follows from it. */
  private final transient Map<Object, WaysFrom> laid = new ConcurrentHashMap<>();

  /**
   * Ways.
   *
   * @param barrow those that a barrow can take
   * @param foot those that people can take
   * @param barriers what nobody carries through: walls, fences without their gates, the ground
   *     beyond the sides that neighbours share
   */
  public Ways(List<WayNetwork.Way> barrow, List<WayNetwork.Way> foot, List<Shape> barriers) {
    this.barriers = List.copyOf(barriers);
    this.ground = new WaysFrom.Ground(barrow, foot);
  }

  /** What nobody carries through. */
  public List<Shape> barriers() {
    return barriers;
  }

  /** The shortest ways from a point, such as a gate. */
  public WaysFrom from(Point at) {
    return laid.computeIfAbsent(at, start -> ground.gate(at));
  }

  /** The shortest ways from the middle of {@code heap}, such as a spot for heaps. */
  public WaysFrom from(Shape heap) {
    return laid.computeIfAbsent(heap, start -> ground.heap(heap));
  }
}
