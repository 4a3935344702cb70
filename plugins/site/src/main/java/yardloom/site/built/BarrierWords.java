package yardloom.site.built;

import yardloom.facts.built.Barrier;
import yardloom.facts.built.Barrier.Made;
import yardloom.facts.built.Flight;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementDraft;
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
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for lines that bar the way, fences, walls and hedges, and for steps between levels. */
public final class BarrierWords {
  private static final Length FENCE_THICKNESS = Length.millimetres(50);
  private static final Length HEDGE_WIDTH = Length.metres(0.6);
  private static final Length WALL_THICKNESS = Length.inches(12);
  private static final Length POSTS = Length.feet(8);
  private static final Length HEDGE_PLANTS = Length.feet(2);
  private static final Length BLOCK_LENGTH = Length.inches(12);
  private static final Length BLOCK_HEIGHT = Length.inches(6);
  private static final Length STEPS_WIDTH = Length.feet(4);
  private static final Length RISER = Length.inches(7);
  private static final Length LEAST_SPACING = Length.inches(6);

  /** A fence that lets so much light through is taken for mesh. */
  private static final double MESH_OPENNESS = 0.7;

  private BarrierWords() {}

  /** What fences are made of. */
  public enum FenceOf {
    BOARDS(Made.BOARDS),
    MESH(Made.MESH);

    private final Made made;

    FenceOf(Made made) {
      this.made = made;
    }
  }

  @Verb(
      help = "A fence along a line. A new one is billed by posts, rails and boards, or mesh.",
      example = "fence('west fence', line([point(0.ft, 0.ft), point(0.ft, 120.ft)]), height: 6.ft)")
  public static Handle fence(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "where it runs, in the middle") Line line,
      @Opt(name = "height", help = "its height above ground", required = true) Length height,
      @Opt(
              name = "openness",
              help = "share of light that passes, 0 for solid boards to 1",
              fallback = "0: solid")
          Number openness,
      @Opt(name = "thickness", help = "how thick it is", fallback = "50 mm (2 in)")
          Length thickness,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be built",
              fallback = "true")
          Boolean standing,
      @Opt(
              name = "made",
              help = "what a new one is made of",
              fallback = "boards, or mesh where 0.7 or more of the light passes",
              choices = FenceOf.class)
          String made,
      @Opt(name = "posts", help = "most from post to post", fallback = "8 ft (2.44 m)")
          Length posts) {
    double open = Limits.share("the openness", Limits.or(openness, 0));
    FenceOf of =
        Choices.parse(FenceOf.class, made, open < MESH_OPENNESS ? FenceOf.BOARDS : FenceOf.MESH);
    Barrier how = Barrier.fence(of.made, spacing("the spacing of posts", posts, POSTS));
    Length thick = Limits.or(thickness, FENCE_THICKNESS);
    return barrier(in, name, line, height, open, thick, standing, how);
  }

  @Verb(
      help = "A clipped or free hedge along a line. A new one is billed by its plants.",
      example = "hedge('privet', line([point(0.ft, 0.ft), point(60.ft, 0.ft)]), height: 4.ft)")
  public static Handle hedge(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "where it runs, in the middle") Line line,
      @Opt(name = "height", help = "its height above ground", required = true) Length height,
      @Opt(name = "width", help = "how wide it is", fallback = "600 mm (24 in)") Length width,
      @Opt(name = "openness", help = "share of light that passes, 0 to 1", fallback = "0: dense")
          Number openness,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be planted",
              fallback = "true")
          Boolean standing,
      @Opt(name = "spacing", help = "from plant to plant", fallback = "2 ft (610 mm)")
          Length spacing) {
    double open = Limits.share("the openness", Limits.or(openness, 0));
    Barrier how =
        Barrier.fence(Made.HEDGE, spacing("the spacing of a hedge", spacing, HEDGE_PLANTS));
    return barrier(in, name, line, height, open, Limits.or(width, HEDGE_WIDTH), standing, how);
  }

  @Verb(
      help =
          "A wall of blocks laid dry. One that retains earth is billed with drain rock, pipe and"
              + " fabric behind it; ask a licensed designer where it is high.",
      example =
          "wall('terrace wall', line([point(0.ft, 40.ft), point(24.ft, 40.ft)]), height: 2.ft,"
              + " retains: true, standing: false)")
  public static Handle wall(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "where it runs, in the middle") Line line,
      @Opt(name = "height", help = "its height above the lower ground", required = true)
          Length height,
      @Opt(name = "thickness", help = "how thick it is", fallback = "12 in (305 mm)")
          Length thickness,
      @Opt(name = "retains", help = "whether it holds earth on one side", fallback = "false")
          Boolean retains,
      @Opt(name = "block", help = "length of a block in the face", fallback = "12 in (305 mm)")
          Length block,
      @Opt(name = "course", help = "height of a course", fallback = "6 in (152 mm)") Length course,
      @Opt(
              name = "standing",
              help = "whether it is there already; what is not is to be built",
              fallback = "true")
          Boolean standing) {
    Barrier how =
        Barrier.wall(
            Limits.or(retains, false),
            Limits.positive(
                "the length of a block", Limits.or(block, BLOCK_LENGTH), Limits.THICKNESS),
            Limits.positive(
                "the height of a course", Limits.or(course, BLOCK_HEIGHT), Limits.THICKNESS));
    return barrier(in, name, line, height, 0, Limits.or(thickness, WALL_THICKNESS), standing, how);
  }

  @Verb(
      help = "Steps up a line from its start to its end. People take them, barrows do not.",
      example =
          "steps('bank steps', line([point(20.ft, 40.ft), point(20.ft, 44.ft)]), rise: 24.inch,"
              + " standing: false)")
  public static Handle steps(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "from the foot to the head, in the middle") Line line,
      @Opt(name = "rise", help = "from the lower to the upper ground", required = true) Length rise,
      @Opt(name = "width", help = "across the way", fallback = "4 ft (1.22 m)") Length width,
      @Opt(name = "riser", help = "most from tread to tread", fallback = "7 in (178 mm)")
          Length riser,
      @Opt(
              name = "standing",
              help = "whether they are there already; what is not is to be laid",
              fallback = "true")
          Boolean standing) {
    ElementId id = Making.id(ElementKind.PAVING, name);
    Length wide =
        Limits.positive("the width of steps", Limits.or(width, STEPS_WIDTH), Limits.PATH_WIDTH);
    Length up = Limits.positive("the rise of steps", rise, Limits.BUILT_HEIGHT);
    Length most = Limits.positive("a riser", Limits.or(riser, RISER), Limits.THICKNESS);
    Shape ground = PathStrip.centred(line, wide);
    ElementDraft element = Making.add(in, id, c -> new Element.Paving(c, ground, "steps"));
    element.attributes().add(Flight.KEY, new Flight(line, up, wide, most), in.place());
    Making.standing(element, standing);
    return Handle.along(id, line, ground);
  }

  private static Length spacing(String what, Length given, Length fallback) {
    Length spacing = Limits.positive(what, Limits.or(given, fallback), Limits.PATH_WIDTH);
    if (spacing.isShortOf(LEAST_SPACING)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          what
              + " is "
              + Limits.show(spacing)
              + "; give "
              + Limits.show(LEAST_SPACING)
              + " or more");
    }
    return spacing;
  }

  private static Handle barrier(
      PlanScope in,
      String name,
      Line line,
      Length height,
      double open,
      Length thickness,
      Boolean standing,
      Barrier how) {
    ElementId id = Making.id(ElementKind.FENCE, name);
    Length tall =
        Limits.positive("the height of a fence, wall or hedge", height, Limits.FENCE_HEIGHT);
    Shape ground =
        PathStrip.centred(line, Limits.positive("the thickness", thickness, Limits.THICKNESS));
    ElementDraft element = Making.add(in, id, c -> new Element.Fence(c, line, ground, tall, open));
    element.attributes().add(Barrier.KEY, how, in.place());
    Making.standing(element, standing);
    return Handle.along(id, line, ground);
  }
}
