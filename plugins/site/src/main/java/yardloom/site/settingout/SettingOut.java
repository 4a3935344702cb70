package yardloom.site.settingout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.LongAxis;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.survey.TapePair;
import yardloom.kernel.unit.Length;
import yardloom.site.ground.LevelWords;

/**
 * What a crew sets out from a plan with two tapes, and the two points they are held at.
 *
 * <p>Beds by their corners; one with more than {@value #MOST_CORNERS} by the corners of the
 * smallest rectangle around it, a round one by its centre. Paths by the ends and bends of their
 * middle, new fences and swales along theirs, other new things that are built by their corners, new
 * trees by their stems; what stands already needs none. The fixed points are corners of the largest
 * building of the lot's own, or of the lot if there is none.
 *
 * @param tapes the two points; empty if there is nothing to set out or nothing to set out from
 */
public record SettingOut(Optional<TapePair> tapes, List<Figure> figures, List<Shape> walls) {
  /** A page holds some so many numbers; with more, each figure has one. */
  private static final int MOST_NUMBERED = 300;

  private static final int MOST_CORNERS = 6;
  private static final double STRAIGHT_M = 0.005;
  private static final double ROUND_M = 0.005;
  private static final int FEWEST_OF_A_CIRCLE = 24;

  /** A corner that a tape can be hooked to turns at least this much. */
  private static final double SHARP_DEGREES = 20;

  /** A curved path may leave the straight lines between its points by this much. */
  private static final double CURVE_M = 0.05;

  /** A tape may graze a wall by this much. */
  private static final Length GRAZE = Length.millimetres(20);

  /** How the points of a figure are to be read. */
  enum Form {
    CORNERS("corner"),
    RECTANGLE_AROUND("corner of the rectangle around it"),
    CIRCLE("centre"),
    WAY("middle point"),
    STEM("stem");

    private final String word;

    Form(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /**
   * One thing to set out.
   *
   * @param radius of a circle, otherwise zero
   */
  record Figure(String name, Form form, List<Point> points, Length radius) {}

  public SettingOut {
    figures = List.copyOf(figures);
    walls = List.copyOf(walls);
  }

  public static SettingOut of(Plan plan) {
    List<Figure> figures = new ArrayList<>();
    for (Element.Bed bed : plan.all(Element.Bed.class)) {
      List<Shape> parts = bed.shape().parts();
      for (int i = 0; i < parts.size(); i++) {
        String part = parts.size() == 1 ? "" : ", part " + (i + 1);
        figures.add(ground(bed.id().name() + part, parts.get(i)));
      }
    }
    for (Element.MulchedGround mulched : plan.all(Element.MulchedGround.class)) {
      mulched.shape().parts().forEach(p -> figures.add(ground(mulched.id().name(), p)));
    }
    for (Element.Path path : plan.all(Element.Path.class)) {
      if (!path.stands()) {
        figures.add(new Figure(path.id().name(), Form.WAY, bends(path.line()), Length.ZERO));
      }
    }
    built(plan, figures);
    for (Element.Tree tree : plan.all(Element.Tree.class)) {
      if (!tree.stands()) {
        figures.add(new Figure(tree.id().name(), Form.STEM, List.of(tree.at()), Length.ZERO));
      }
    }
    List<Shape> walls = plan.all(Element.Building.class).stream().map(b -> b.shape()).toList();
    List<Shape> solid = walls.stream().map(w -> w.shrunk(GRAZE)).toList();
    List<Point> targets = figures.stream().flatMap(f -> f.points().stream()).toList();
    return new SettingOut(
        TapePair.best(fixed(plan), targets, (from, to) -> isFree(solid, from, to)), figures, solid);
  }

  /** What is to be built: fences and swales along their lines, all else by its ground. */
  private static void built(Plan plan, List<Figure> figures) {
    for (Element e : plan.elements()) {
      if (e.stands()) {
        continue;
      }
      Optional<Line> along =
          e.attributes()
              .get(LevelWords.SwaleLine.KEY)
              .map(LevelWords.SwaleLine::line)
              .or(() -> e instanceof Element.Fence f ? Optional.of(f.line()) : Optional.empty());
      if (along.isPresent()) {
        figures.add(new Figure(e.id().name(), Form.WAY, bends(along.get()), Length.ZERO));
      } else if (e instanceof Element.Structure || e instanceof Element.Paving) {
        e.shape().parts().forEach(part -> figures.add(ground(e.id().name(), part)));
      }
    }
  }

  /** Whether there are more points than a page has room for numbers. */
  boolean isCrowded() {
    return figures.stream().mapToInt(f -> f.points().size()).sum() > MOST_NUMBERED;
  }

  /** Whether no building stands between the two. */
  boolean isFree(Point from, Point to) {
    return isFree(walls, from, to);
  }

  private static boolean isFree(List<Shape> solid, Point from, Point to) {
    return from.equals(to) || solid.stream().noneMatch(w -> from.to(to).jts().intersects(w.jts()));
  }

  private static List<Point> fixed(Plan plan) {
    Optional<Shape> building =
        plan.all(Element.Building.class).stream()
            .filter(b -> !b.neighbour())
            .map(Element.Building::shape)
            .max(Comparator.comparing(Shape::area));
    return Stream.concat(building.stream(), plan.lot().stream().map(l -> l.shape()))
        .map(s -> s.parts().stream().flatMap(p -> sharp(p.corners()).stream()).sorted().toList())
        .filter(corners -> corners.size() > 1)
        .findFirst()
        .orElse(List.of());
  }

  private static List<Point> sharp(List<Point> corners) {
    int n = corners.size();
    List<Point> sharp = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point before = corners.get((i + n - 1) % n);
      Point after = corners.get((i + 1) % n);
      double inner = new TapePair(before, after).crossing(corners.get(i)).degrees();
      if (180 - inner >= SHARP_DEGREES) {
        sharp.add(corners.get(i));
      }
    }
    return sharp;
  }

  private static Figure ground(String name, Shape shape) {
    List<Point> corners = straightened(shape.corners());
    if (corners.size() <= MOST_CORNERS) {
      return new Figure(name, Form.CORNERS, fromLowerLeft(corners), Length.ZERO);
    }
    Point centre = shape.centroid();
    List<Length> out = shape.corners().stream().map(centre::distance).sorted().toList();
    Length radius = out.get(out.size() - 1);
    if (out.size() >= FEWEST_OF_A_CIRCLE && radius.minus(out.get(0)).metres() <= ROUND_M) {
      // The figure has the area of its circle, not its corners' distance.
      Length ofCircle =
          Length.metres(Math.sqrt(Shape.polygon(shape.corners()).area().squareMetres() / Math.PI));
      return new Figure(name, Form.CIRCLE, List.of(centre), ofCircle);
    }
    LongAxis axis = LongAxis.of(shape);
    return new Figure(
        name,
        Form.RECTANGLE_AROUND,
        fromLowerLeft(
            List.of(
                axis.at(Length.ZERO, Length.ZERO),
                axis.at(axis.length(), Length.ZERO),
                axis.at(axis.length(), axis.width()),
                axis.at(Length.ZERO, axis.width()))),
        Length.ZERO);
  }

  /** The same round, begun at the corner furthest down and left on the plan, to 1 mm. */
  private static List<Point> fromLowerLeft(List<Point> corners) {
    Comparator<Point> order =
        Comparator.<Point>comparingLong(p -> Math.round(p.x().plus(p.y()).metres() * 1000))
            .thenComparing(Comparator.naturalOrder());
    List<Point> turned = new ArrayList<>(corners);
    Collections.rotate(turned, -corners.indexOf(Collections.min(corners, order)));
    return turned;
  }

  /** Without the corners that lie on the line between their neighbours. */
  private static List<Point> straightened(List<Point> corners) {
    List<Point> kept = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point before = kept.isEmpty() ? corners.get(corners.size() - 1) : kept.get(kept.size() - 1);
      Point after = corners.get((i + 1) % corners.size());
      Point at = corners.get(i);
      if (before.to(after).nearest(at).distance(at).metres() > STRAIGHT_M) {
        kept.add(at);
      }
    }
    return kept;
  }

  private static List<Point> bends(Line line) {
    double within = line.points().size() > MOST_CORNERS ? CURVE_M : STRAIGHT_M;
    return Stream.of(DouglasPeuckerSimplifier.simplify(line.jts(), within).getCoordinates())
        .map(c -> Point.metres(c.x, c.y))
        .toList();
  }
}
