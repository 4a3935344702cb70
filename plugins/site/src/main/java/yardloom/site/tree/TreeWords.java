package yardloom.site.tree;

import java.util.function.Consumer;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.Leaf;
import yardloom.kernel.plan.ElementDraft;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.scope.Limits;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.scope.TreeScope;
import yardloom.kernel.unit.Length;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Choices;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;

/** Words for trees and the ground that is protected round them. */
public final class TreeWords {
  /** Without a measured lower edge a crown is taken to start at this share of the height. */
  private static final double CROWN_BASE_SHARE = 0.25;

  /**
   * How far digging and paving keep from trunks.
   *
   * @param factor radius over trunk diameter
   */
  public record TreeProtection(double factor, String rule) {
    public static final AttributeKey<TreeProtection> KEY =
        new AttributeKey<>("site.tree-protection", TreeProtection.class);
  }

  private TreeWords() {}

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
      help = "How wide the protected ground round a trunk is, as a multiple of its diameter.",
      example = "treeProtection(factor: 12, rule: 'tree ordinance')")
  public static void treeProtection(
      PlanScope in,
      @Opt(name = "factor", help = "radius over trunk diameter", required = true) Number factor,
      @Opt(name = "rule", help = "who says so", fallback = "none: verify locally") String rule) {
    double times = factor.doubleValue();
    if (!(times > 0 && times <= 60)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          in.place(),
          "the factor must lie between 0 and 60 trunk diameters, got " + factor);
    }
    Making.once(in, TreeProtection.KEY, t -> true, "`treeProtection`");
    in.draft()
        .attributes()
        .add(TreeProtection.KEY, new TreeProtection(times, Limits.or(rule, "")), in.place());
  }
}
