package yardloom.kernel.words;

import java.util.function.Consumer;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.PathStrip;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.Leaf;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for trees and paths. */
public final class GrowingWords {
  /** Without a measured lower edge a crown is taken to start at this share of the height. */
  private static final double CROWN_BASE_SHARE = 0.25;

  private GrowingWords() {}

  @Verb(
      help = "A tree, standing or to be planted.",
      example = "tree('oak', point(50.ft, 100.ft), crown: 30.ft, height: 40.ft, trunk: 18.inch)")
  public static Handle tree(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "at", help = "the middle of its trunk") Point at,
      @Opt(name = "crown", help = "diameter of its crown", required = true) Length crown,
      @Opt(name = "height", help = "its height", required = true) Length height,
      @Opt(
              name = "crownBase",
              help = "height of the lowest branches",
              fallback = "a quarter of its height")
          Length crownBase,
      @Opt(
              name = "trunk",
              help = "diameter of the trunk at breast height, for its root protection zone",
              fallback = "not measured")
          Length trunk,
      @Opt(
              name = "leaf",
              help = "when it bears leaves",
              fallback = "deciduous",
              choices = Leaf.class)
          String leaf,
      Consumer<TreeScope> block) {
    ElementId id = Making.id(ElementKind.TREE, name);
    Length wide = Limits.positive("the diameter of a crown", crown, Limits.CROWN);
    Length tall = Limits.positive("the height of a tree", height, Limits.TREE_HEIGHT);
    Length base =
        Limits.zeroOrMore(
            "the height of the lowest branches",
            Limits.or(crownBase, tall.times(CROWN_BASE_SHARE)),
            Limits.TREE_HEIGHT);
    if (base.compareTo(tall) >= 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          id
              + ": the lowest branches at "
              + Limits.show(base)
              + " must be below its height of "
              + Limits.show(tall));
    }
    Length stem =
        Limits.zeroOrMore("the diameter of a trunk", Limits.or(trunk, Length.ZERO), Limits.TRUNK);
    Leaf kind = Choices.parse(Leaf.class, leaf, Leaf.DECIDUOUS);
    Shape ground = Shape.circle(at, wide.div(2));
    ElementDraft element =
        Making.add(in, id, c -> new Element.Tree(c, at, ground, wide, tall, base, stem, kind));
    Making.read(block, TreeScope::new, in, element);
    return new Handle(id, ground);
  }

  @Verb(
      help = "A path along a line.",
      example = "path('main', line([point(30.ft, 70.ft), point(30.ft, 115.ft)]), use: 'barrow')")
  public static Handle path(
      PlanScope in,
      @Arg(name = "name", help = "its name on the plan") String name,
      @Arg(name = "line", help = "its middle line; a line that ends where it starts is a loop")
          Line line,
      @Opt(
              name = "width",
              help = "its width",
              fallback = "24 in on foot, 36 in for a barrow, 48 in for a wheelchair")
          Length width,
      @Opt(name = "use", help = "who or what uses it", fallback = "foot", choices = PathUse.class)
          String use,
      Consumer<PathScope> block) {
    ElementId id = Making.id(ElementKind.PATH, name);
    PathUse by = Choices.parse(PathUse.class, use, PathUse.FOOT);
    Length wide =
        Limits.positive(
            "the width of a path", Limits.or(width, PathWidths.usual(by)), Limits.PATH_WIDTH);
    Shape ground = PathStrip.centred(line, wide);
    ElementDraft element = Making.add(in, id, c -> new Element.Path(c, line, ground, wide, by));
    Making.read(block, PathScope::new, in, element);
    return Handle.along(id, line, ground);
  }
}
