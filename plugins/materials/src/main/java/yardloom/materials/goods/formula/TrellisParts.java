package yardloom.materials.goods.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Posts and wire of a trellis along a line.
 *
 * <p>A post at both ends and at every bend, and so many between that none are further apart than
 * the spacing. Wire is wires × length, a tenth more for tails and ties. Posts stand a third of
 * their length in the ground, at least 2 ft. A closed line shares its first post. A spacing of
 * nothing cannot reach here; the words refuse it.
 *
 * <p>References: common practice of fencing.
 */
public final class TrellisParts {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.commonPractice("posts at ends and bends; a third of a post in the ground");

  private static final double TAILS = 1.1;

  private TrellisParts() {}

  /** How many posts {@link #places} gives. */
  public static int posts(Line line, Length spacing) {
    return places(line, spacing).size();
  }

  /** Where posts stand, from the start of the line on. */
  public static List<Point> places(Line line, Length spacing) {
    List<Point> corners = line.points();
    List<Point> places = new ArrayList<>();
    for (int i = 1; i < corners.size(); i++) {
      Point from = corners.get(i - 1);
      Point to = corners.get(i);
      int parts = Math.max(1, (int) Math.ceil(from.distance(to).ratioTo(spacing) - 1e-9));
      for (int k = 0; k < parts; k++) {
        double share = (double) k / parts;
        places.add(
            from.moved(to.x().minus(from.x()).times(share), to.y().minus(from.y()).times(share)));
      }
    }
    if (!line.isClosed()) {
      places.add(line.end());
    }
    return List.copyOf(places);
  }

  public static Length wire(Line line, int wires) {
    return line.length().times(wires * TAILS);
  }
}
