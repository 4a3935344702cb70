package yardloom.site.outline;

import java.util.List;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Verb;

/**
 * Words for points, lines and shapes; they may stand in every block and add nothing to the plan.
 */
public final class ShapeWords {
  private ShapeWords() {}

  @Verb(
      help = "A point, measured from the plan's origin to the right and up.",
      example = "point(12.ft, 30.ft)")
  public static Point point(
      Scope in,
      @Arg(name = "x", help = "distance to the right of the origin") Length x,
      @Arg(name = "y", help = "distance up the plan from the origin") Length y) {
    Limits.atMost("the distance of a point from the origin", x.max(x.negative()), Limits.REACH);
    Limits.atMost("the distance of a point from the origin", y.max(y.negative()), Limits.REACH);
    return new Point(x, y);
  }

  @Verb(
      help = "An upright rectangle, from its lower left corner.",
      example = "rect(0.ft, 0.ft, 60.ft, 120.ft)")
  public static Shape rect(
      Scope in,
      @Arg(name = "x", help = "x of the lower left corner") Length x,
      @Arg(name = "y", help = "y of the lower left corner") Length y,
      @Arg(name = "width", help = "size from left to right") Length width,
      @Arg(name = "depth", help = "size up the plan") Length depth) {
    Limits.positive("the width of a rectangle", width, Limits.REACH);
    Limits.positive("the depth of a rectangle", depth, Limits.REACH);
    return Shape.rectangle(point(in, x, y), width, depth);
  }

  @Verb(help = "A round shape.", example = "circle(point(20.ft, 40.ft), 6.ft)")
  public static Shape circle(
      Scope in,
      @Arg(name = "centre", help = "its middle") Point centre,
      @Arg(name = "radius", help = "half its width") Length radius) {
    Limits.positive("the radius of a circle", radius, Limits.REACH);
    return Shape.circle(centre, radius);
  }

  @Verb(
      help = "A shape with straight sides through the given corners, in order around it.",
      example = "polygon([point(0.ft, 0.ft), point(10.ft, 0.ft), point(0.ft, 8.ft)])")
  public static Shape polygon(
      Scope in,
      @Arg(name = "corners", help = "three or more corners, without repeating the first")
          List<Point> corners) {
    return Shape.polygon(corners);
  }

  @Verb(
      help = "A line through the given points.",
      example = "line([point(0.ft, 0.ft), point(0.ft, 40.ft)])")
  public static Line line(
      Scope in, @Arg(name = "points", help = "two or more points in order") List<Point> points) {
    return Line.through(points);
  }

  @Verb(
      help = "A ring, such as a bed round a tree.",
      example = "ring(point(20.ft, 40.ft), 2.ft, 5.ft)")
  public static Shape ring(
      Scope in,
      @Arg(name = "centre", help = "its middle") Point centre,
      @Arg(name = "inner", help = "radius of its hole") Length inner,
      @Arg(name = "outer", help = "radius of its outside") Length outer) {
    Limits.positive("the radius of a ring's hole", inner, Limits.REACH);
    if (outer.compareTo(inner) <= 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "the outer radius of a ring, "
              + Limits.show(outer)
              + ", must be more than its hole's, "
              + Limits.show(inner));
    }
    return Shape.circle(centre, outer).minus(Shape.circle(centre, inner));
  }

  @Verb(
      help = "A keyhole: a round bed with a path to a standing place in its middle.",
      example = "keyhole(point(20.ft, 40.ft), 4.ft, facing: 180.deg)")
  public static Shape keyhole(
      Scope in,
      @Arg(name = "centre", help = "its middle") Point centre,
      @Arg(name = "radius", help = "half its width") Length radius,
      @Opt(
              name = "facing",
              help = "bearing of its entrance, clockwise from the plan's up direction",
              fallback = "180 degrees: down the plan")
          Angle facing,
      @Opt(name = "entrance", help = "width of its entrance", fallback = "18 in") Length entrance,
      @Opt(name = "middle", help = "radius of the standing place", fallback = "12 in")
          Length middle) {
    Length hub = Limits.or(middle, Length.inches(12));
    Length way = Limits.or(entrance, Length.inches(18));
    Limits.positive("the radius of the standing place", hub, Limits.REACH);
    Limits.positive("the width of the entrance", way, Limits.REACH);
    if (hub.compareTo(radius) >= 0 || way.div(2).compareTo(radius) >= 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "the standing place and entrance leave nothing of a keyhole with a radius of "
              + Limits.show(radius));
    }
    double turn = Limits.or(facing, Angle.degrees(180)).radians();
    Point out =
        centre.moved(
            radius.times(1.5 * StrictMath.sin(turn)), radius.times(1.5 * StrictMath.cos(turn)));
    return Shape.circle(centre, radius)
        .minus(Shape.circle(centre, hub))
        .minus(PathStrip.centred(Line.between(centre, out), way));
  }
}
