package yardloom.kernel.geom;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * The shortest ways from one place along the paths and hard surfaces of a plan, with a barrow and
 * on foot: along the middle of paths and straight across surfaces.
 *
 * <p>The table of ways to the beds, the findings about beds that no way reaches and the hauls of
 * mulch all read this class, so that they agree. A barrow takes paving and the paths at least as
 * wide as the plan's or the place's standard asks. A way starts at most 0.6 m (24 in) off a path,
 * and ends where a path or a surface comes as near to the goal.
 *
 * <p>References: {@link WayNetwork}.
 */
public final class WaysFrom {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.computed(
          "A note on two problems in connexion with graphs",
          "E. W. Dijkstra, Numerische Mathematik 1",
          1959,
          "pp. 269-271");

  /** Somebody with a barrow works this far beside a path, or starts this far beside it. */
  private static final Length BESIDE = Length.metres(0.6);

  private final Late barrow;
  private final Late foot;

  private WaysFrom(Supplier<WayNetwork> barrow, Supplier<WayNetwork> foot) {
    this.barrow = new Late(barrow);
    this.foot = new Late(foot);
  }

  /**
   * A network that is laid when it is first asked for, since hauls never ask for ways on foot, and
   * the ways that were asked for, since rule, table and hauls ask for the same.
   */
  private static final class Late {
    private final Supplier<WayNetwork> made;
    private final Map<Shape, Optional<Route>> known = new ConcurrentHashMap<>();
    private WayNetwork network;

    Late(Supplier<WayNetwork> made) {
      this.made = made;
    }

    synchronized WayNetwork get() {
      if (network == null) {
        network = made.get();
      }
      return network;
    }

    Optional<Route> to(Shape goal) {
      return known.computeIfAbsent(goal, to -> get().to(to, BESIDE));
    }
  }

  /** The ways of one plan, from whatever start: what can be seen on open ground is found once. */
  public static final class Ground {
    private final List<WayNetwork.Way> barrow;
    private final List<WayNetwork.Way> foot;

    /** No part of the value, since it follows from it. */
    private final transient Sights.All sights = new Sights.All();

    /**
     * Ways.
     *
     * @param barrow what a barrow can take
     * @param foot what people can take
     */
    public Ground(List<WayNetwork.Way> barrow, List<WayNetwork.Way> foot) {
      this.barrow = List.copyOf(barrow);
      this.foot = List.copyOf(foot);
    }

    /** The ways from a point, such as a gate. */
    public WaysFrom gate(Point at) {
      return new WaysFrom(
          () -> new WayNetwork(barrow, at, BESIDE, sights),
          () -> new WayNetwork(foot, at, BESIDE, sights));
    }

    /** The ways from the middle of {@code ground}, such as a spot for heaps; it is not empty. */
    public WaysFrom heap(Shape ground) {
      return new WaysFrom(
          () -> new WayNetwork(barrow, ground, BESIDE, sights),
          () -> new WayNetwork(foot, ground, BESIDE, sights));
    }
  }

  /** Whether no way that a barrow can take comes near the start. */
  public boolean isCutOff() {
    return barrow.get().isCutOff();
  }

  /** With a barrow to the nearest place beside {@code goal}; empty if no way leads there. */
  public Optional<Route> withBarrow(Shape goal) {
    return barrow.to(goal);
  }

  /** On foot to the nearest place beside {@code goal}; empty if no way leads there. */
  public Optional<Route> onFoot(Shape goal) {
    return foot.to(goal);
  }

  /**
   * With a barrow to halfway along the middle of {@code path}; empty if it is too narrow or no way
   * leads there.
   */
  public Optional<Route> withBarrowAlong(Line path) {
    return barrow.get().halfwayAlong(path);
  }
}
