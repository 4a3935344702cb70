package yardloom.site.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Spot;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.ground.Swale;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for the levels of the ground and what is dug along it. */
public final class LevelWords {
  /** How contours are drawn. */
  public record ContourStep(Length interval) {
    public static final AttributeKey<ContourStep> KEY =
        new AttributeKey<>("site.contours", ContourStep.class);
  }

  /** A swale, on the structure that shows its ground. */
  public record SwaleLine(Swale swale, Line line) {
    public static final AttributeKey<SwaleLine> KEY =
        new AttributeKey<>("site.swale", SwaleLine.class);
  }

  private static final double USUAL_SIDES = 3;

  private LevelWords() {}

  @Verb(
      help =
          "The levels of the ground; between them it is taken as plane, outside them as unknown.",
      example =
          "levels(contours: 1.ft) { level(point(0.ft, 0.ft), 100.ft) ; level(point(60.ft, 0.ft),"
              + " 99.ft) ; level(point(0.ft, 120.ft), 103.ft) }")
  public static Surface levels(
      PlanScope in,
      @Opt(
              name = "contours",
              help = "height between two contour lines",
              fallback = "no contours are drawn")
          Length contours,
      Consumer<LevelScope> block) {
    List<Spot> spots = new ArrayList<>();
    List<List<Spot>> breaklines = new ArrayList<>();
    if (in.draft().attributes().has(Surface.KEY)) {
      throw new PlanException(
          ProblemCode.DUPLICATE, in.place(), "`levels` is already given; a plan has one ground");
    }
    if (block != null) {
      block.accept(new LevelScope(spots, breaklines, in.place()));
    }
    Surface surface;
    try {
      surface = Surface.of(spots, breaklines);
    } catch (PlanException e) {
      throw e.at(in.place());
    }
    in.draft().attributes().add(Surface.KEY, surface, in.place());
    if (contours != null) {
      Length step = Limits.positive("the contour interval", contours, Limits.BUILT_HEIGHT);
      in.draft().attributes().add(ContourStep.KEY, new ContourStep(step), in.place());
    }
    return surface;
  }

  @Verb(
      help = "The level of the ground at a point.",
      example = "level(point(0.ft, 0.ft), 100.4.ft)")
  public static void level(
      LevelScope in,
      @Arg(name = "at", help = "where") Point at,
      @Arg(name = "height", help = "height above the plan's datum") Length height) {
    in.spots().add(new Spot(at, height));
  }

  @Verb(
      help = "A line along which the ground bends, such as the top of a bank, with its levels.",
      example = "breakline([point(0.ft, 40.ft), point(60.ft, 42.ft)], [101.ft, 101.5.ft])")
  public static void breakline(
      LevelScope in,
      @Arg(name = "points", help = "points in order") List<Point> points,
      @Arg(name = "heights", help = "one height for each point") List<Length> heights) {
    if (points.size() != heights.size()) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          "a breakline needs one height for each point, got "
              + points.size()
              + " points and "
              + heights.size()
              + " height(s); write them in the same order");
    }
    List<Spot> line = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      line.add(new Spot(points.get(i), heights.get(i)));
    }
    in.breaklines().add(line);
  }

  @Verb(
      help = "A shallow ditch that holds or leads water, dug along a line.",
      example = "swale('upper swale', contour, bottom: 2.ft, depth: 8.inch, sides: 3)")
  public static Handle swale(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "its middle line") Line line,
      @Opt(name = "bottom", help = "width of its bottom", fallback = "2 ft") Length bottom,
      @Opt(name = "depth", help = "its depth", required = true) Length depth,
      @Opt(name = "sides", help = "run over rise of its sides", fallback = "3, a side of 3:1")
          Number sides) {
    ElementId id = Making.id(ElementKind.STRUCTURE, name);
    Swale swale =
        new Swale(
            Limits.zeroOrMore(
                "the bottom of a swale", Limits.or(bottom, Length.feet(2)), Limits.PATH_WIDTH),
            Limits.positive("the depth of a swale", depth, Limits.THICKNESS),
            Limits.or(sides, USUAL_SIDES).doubleValue());
    Shape ground = PathStrip.centred(line, swale.top());
    Making.add(in, id, c -> new Element.Structure(c, ground, Length.ZERO))
        .attributes()
        .add(SwaleLine.KEY, new SwaleLine(swale, line), in.place());
    return Handle.along(id, line, ground);
  }
}
