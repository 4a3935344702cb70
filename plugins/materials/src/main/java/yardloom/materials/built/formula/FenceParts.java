package yardloom.materials.built.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.goods.formula.TrellisParts;

/**
 * Posts, rails, boards and concrete of a fence along a line with gates in it.
 *
 * <p>The line is cut into runs at the gates' openings. A run has a post at both ends, at every bend
 * and so many between that none are further apart than the spacing; the bays between two posts take
 * the rails. A gate at the end of the line has a post of its own there. A closed line without gates
 * has as many posts as bays. A third of a post stands in the ground, at least 2 ft. Each hole is 10
 * in across and takes concrete less the post's own volume. Openings may overlap or reach beyond the
 * line; they are joined and cut.
 *
 * <p>References: [1] a public fence calculator with a worked example (150 ft): rails two to 4 ft
 * and three above, a third of the post in the ground. [2] a public page on concrete in post holes:
 * 10 in for 4x4, a 60 lb bag yields 0.45 cu ft.
 */
public final class FenceParts {
  /** Printed beside posts, rails and boards. */
  public static final Source SOURCE =
      Source.read(
          "Fence calculator: how materials are calculated", "a public calculator page", 0, "");

  /** Printed beside concrete. */
  public static final Source CONCRETE =
      Source.read("Post hole concrete: volume and bags", "a public calculator page", 0, "");

  /** Mixed concrete of one bag of 60 lb. */
  public static final Volume BAG = Volume.cubicFeet(0.45);

  /** Across a hole for a 4x4. */
  public static final Length HOLE = Length.inches(10);

  /** A dressed 4x4. */
  public static final Length POST = Length.inches(3.5);

  private static final Length TWO_RAILS = Length.feet(4);
  private static final Length LEAST_BURIED = Length.feet(2);
  private static final double SLIVER_M = 0.01;

  private FenceParts() {}

  /** An opening from one distance along the line to another. */
  public record Opening(Length from, Length to) {}

  /** Where posts stand and how many bays lie between them. */
  public record Runs(List<Point> posts, int bays, Length length) {}

  /** The runs between the openings; openings in order of their begin. */
  public static Runs runs(Line line, Length spacing, List<Opening> openings) {
    if (openings.isEmpty()) {
      List<Point> posts = TrellisParts.places(line, spacing);
      return new Runs(posts, posts.size() - (line.isClosed() ? 0 : 1), line.length());
    }
    List<Point> posts = new ArrayList<>();
    int bays = 0;
    Length length = Length.ZERO;
    Length at = Length.ZERO;
    for (int i = 0; i <= openings.size(); i++) {
      Length end = i < openings.size() ? openings.get(i).from() : line.length();
      // An opening that begins within the one before leaves nothing between them.
      boolean apart = end.compareTo(at) >= 0;
      if (apart && end.minus(at).metres() < SLIVER_M) {
        posts.add(line.at(at));
      } else if (apart) {
        List<Point> run = TrellisParts.places(line.part(at, end), spacing);
        posts.addAll(run);
        bays += run.size() - 1;
        length = length.plus(end.minus(at));
      }
      at = i < openings.size() ? openings.get(i).to().max(at) : at;
    }
    return new Runs(List.copyOf(posts), bays, length);
  }

  /** Rails of a bay: two to 4 ft, three above. */
  public static int rails(Length height) {
    return height.compareTo(TWO_RAILS) <= 0 ? 2 : 3;
  }

  /** Of a post, in the ground: half of what stands above it, at least 2 ft. */
  public static Length buried(Length height) {
    return height.div(2).max(LEAST_BURIED);
  }

  /** Boards that cover a share of a run. */
  public static int boards(Length run, double openness, Length board) {
    return (int) Math.ceil(run.ratioTo(board) * (1 - openness) - 1e-9);
  }

  /** In one hole about one post. */
  public static Volume concrete(Length hole, Length post, Length depth) {
    double radiusM = hole.metres() / 2;
    double postM = post.metres();
    return Volume.cubicMetres((Math.PI * radiusM * radiusM - postM * postM) * depth.metres());
  }
}
