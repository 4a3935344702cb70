package yardloom.materials.calc;

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

  public static int posts(Line line, Length spacing) {
    List<Point> points = line.points();
    int posts = line.isClosed() ? 0 : 1;
    for (int i = 1; i < points.size(); i++) {
      Length run = points.get(i - 1).distance(points.get(i));
      posts += Math.max(1, (int) Math.ceil(run.ratioTo(spacing) - 1e-9));
    }
    return posts;
  }

  /** Posts that take the pull of wires: ends and bends. */
  public static int braced(Line line) {
    return line.isClosed() ? line.points().size() - 1 : line.points().size();
  }

  public static Length wire(Line line, int wires) {
    return line.length().times(wires * TAILS);
  }

  public static Length inGround(Length post) {
    return post.div(3).max(Length.feet(2));
  }
}
