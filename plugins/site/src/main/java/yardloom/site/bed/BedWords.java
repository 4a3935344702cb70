package yardloom.site.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.StripSearch;
import yardloom.kernel.geom.Strips;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words that make beds. */
public final class BedWords {
  /** Common practice: a gardener reaches 24 in into a bed, from either side. */
  private static final Length WITHIN_REACH = Length.inches(48);

  private BedWords() {}

  @Verb(
      help = "Ground to be planted.",
      example = "bed('herbs', rect(10.ft, 80.ft, 4.ft, 20.ft), use: 'perennial') { }")
  public static Handle bed(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "shape", help = "the ground it covers") Shape shape,
      @Opt(
              name = "use",
              help = "what it mainly grows",
              fallback = "perennial",
              choices = BedUse.class)
          String use,
      @Opt(
              name = "built",
              help = "whether it is there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built,
      Consumer<BedScope> block) {
    return Making.built(in, built, () -> make(in, name, shape, use, block));
  }

  @Verb(
      help =
          "Parallel beds of one width, laid into a region with gaps to walk in; they are called by"
              + " the name and a number, and the block is read for each.",
      example =
          "beds('row', rect(10.ft, 75.ft, 40.ft, 30.ft), width: 4.ft, gap: 2.ft, use: 'annual') {"
              + " }")
  public static Handle beds(
      PlanScope in,
      @Arg(name = "name", help = "what they are called before their number") String name,
      @Arg(name = "region", help = "the ground to fill") Shape region,
      @Opt(
              name = "width",
              help = "width of one bed",
              fallback = "48 in: as far as one reaches from both sides")
          Length width,
      @Opt(name = "gap", help = "width of the ground between two beds", required = true) Length gap,
      @Opt(
              name = "bearing",
              help = "direction of their length, clockwise from the plan's up direction",
              fallback = "along the longest edge of the region")
          Angle bearing,
      @Opt(
              name = "fit",
              help =
                  "`edge` starts at the region's edge; `most` tries many bearings and offsets for"
                      + " the largest area and notes what it gained",
              fallback = "edge",
              choices = StripFit.class)
          String fit,
      @Opt(
              name = "paths",
              help = "who uses the gaps; makes a path of each",
              fallback = "no paths are made",
              choices = PathUse.class)
          String paths,
      @Opt(
              name = "use",
              help = "what they mainly grow",
              fallback = "perennial",
              choices = BedUse.class)
          String use,
      @Opt(
              name = "built",
              help = "whether they are there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built,
      Consumer<BedScope> block) {
    ElementId group = Making.id(ElementKind.BED, name);
    Making.requireGround(group, region);
    Length wide =
        Limits.positive("the width of a bed", Limits.or(width, WITHIN_REACH), Limits.STRIP);
    Limits.zeroOrMore("the gap between beds", gap, Limits.STRIP);
    Strips.Layout layout = layout(in, group, region, wide, gap, bearing, fit);
    List<Shape> strips = Strips.fill(region, layout);
    if (strips.isEmpty()) {
      throw new PlanException(
          ProblemCode.BAD_SHAPE,
          in.place(),
          group
              + ": no bed of "
              + Limits.show(wide)
              + " fits into the region; make the beds narrower or turn them with `bearing:`");
    }
    return Making.built(
        in,
        built,
        () -> {
          List<Handle> made = new ArrayList<>();
          for (int i = 0; i < strips.size(); i++) {
            made.add(make(in, name + " " + (i + 1), strips.get(i), use, block));
          }
          if (paths != null) {
            List<Strips.Gap> gaps = Strips.gaps(region, layout);
            makePaths(in, name, gaps, gap, Choices.parse(PathUse.class, paths));
          }
          return Handle.group(group, made);
        });
  }

  private static Strips.Layout layout(
      PlanScope in,
      ElementId group,
      Shape region,
      Length width,
      Length gap,
      Angle bearing,
      String fit) {
    if (Choices.parse(StripFit.class, fit, StripFit.EDGE) == StripFit.EDGE) {
      return Strips.Layout.of(width, gap, bearing == null ? Strips.longestEdge(region) : bearing);
    }
    if (bearing != null) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          in.place(),
          group + ": `fit: 'most'` looks for the bearing itself; leave out `bearing:`");
    }
    StripSearch.Found found = StripSearch.best(region, width, gap);
    in.draft().attributes().add(StripGain.KEY, StripGain.of(group, found), in.place());
    return found.layout();
  }

  private static void makePaths(
      PlanScope in, String name, List<Strips.Gap> gaps, Length width, PathUse use) {
    for (int i = 0; i < gaps.size(); i++) {
      Strips.Gap gap = gaps.get(i);
      ElementId id = Making.id(ElementKind.PATH, name + " path " + (i + 1));
      Making.add(in, id, c -> new Element.Path(c, gap.line(), gap.ground(), width, use));
    }
  }

  @Verb(
      help =
          "A bed along the left of a line: outside of a house side, inside of a lot side. A plain"
              + " line is turned by writing its points the other way round.",
      example = "bedAlong('wall bed', house.south, depth: 3.ft, gap: 6.inch) { }")
  public static Handle bedAlong(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "the side or line it follows") Line line,
      @Opt(name = "depth", help = "its size away from the line", required = true) Length depth,
      @Opt(name = "gap", help = "free ground between line and bed", fallback = "0") Length gap,
      @Opt(
              name = "from",
              help = "where on the line it starts, measured along it",
              fallback = "the start")
          Length from,
      @Opt(
              name = "length",
              help = "how far it runs along the line",
              fallback = "to the end of the line")
          Length length,
      @Opt(
              name = "use",
              help = "what it mainly grows",
              fallback = "perennial",
              choices = BedUse.class)
          String use,
      @Opt(
              name = "built",
              help = "whether it is there already: looked after, not bought or worked",
              fallback = "false")
          Boolean built,
      Consumer<BedScope> block) {
    Length start = Limits.zeroOrMore("the start", Limits.or(from, Length.ZERO), line.length());
    Length rest = line.length().minus(start);
    Length runs = Limits.positive("the length", Limits.or(length, rest), rest);
    Shape shape =
        PathStrip.leftOf(
            line.part(start, start.plus(runs)),
            Limits.zeroOrMore("the gap", Limits.or(gap, Length.ZERO), Limits.STRIP),
            Limits.positive("the depth of a bed", depth, Limits.STRIP));
    return Making.built(in, built, () -> make(in, name, shape, use, block));
  }

  private static Handle make(
      PlanScope in, String name, Shape shape, String use, Consumer<BedScope> block) {
    ElementId id = Making.id(ElementKind.BED, name);
    Making.requireGround(id, shape);
    BedUse grows = Choices.parse(BedUse.class, use, BedUse.PERENNIAL);
    ElementDraft element = Making.add(in, id, c -> new Element.Bed(c, shape, grows));
    Making.read(block, BedScope::new, in, element);
    return new Handle(id, shape);
  }
}
