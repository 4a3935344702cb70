package yardloom.site.lawn;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.LawnEdge;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Surface;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Gives how far mulch meets lawn that stays: the edge of all mulched ground together, without what
 * runs along walls, fences, hard surfaces, standing paths, the lot line and round stems.
 */
public final class LawnEdgeCalculator implements Calculator {
  /** The bare strip along walls and round stems is no lawn. */
  private static final Length BARE = Length.inches(14);

  private static final Source OUTLINES =
      Source.plan("outlines on the plan; within 14 in (36 cm) of a wall or stem grows no lawn");

  @Override
  public String id() {
    return "site.lawn-edge";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.SURFACES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.LAWN_EDGE);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<Surface> surfaces = in.all(YardFacts.SURFACES);
    if (surfaces.isEmpty()) {
      return;
    }
    Shape mulched = Shape.union(surfaces.stream().map(Surface::shape).toList());
    Length all = mulched.perimeter();
    Length meets = mulched.edgeOutside(noLawn(plan));
    out.give(
        YardFacts.LAWN_EDGE,
        new LawnEdge(
            Derived.by("edge of all mulched ground − edge along what is no lawn", OUTLINES)
                .from("edge of all mulched ground", all)
                .from("edge along what is no lawn", all.minus(meets))
                .gives(meets)));
  }

  private static Shape noLawn(Plan plan) {
    List<Shape> hard = new ArrayList<>();
    for (Element e : plan.elements()) {
      switch (e.id().kind()) {
        case BUILDING, STRUCTURE, FENCE, PAVING -> hard.add(e.shape().grown(BARE));
        case PATH -> hard.add(e.stands() ? e.shape().grown(Length.millimetres(20)) : Shape.EMPTY);
        case TREE -> {
          Element.Tree tree = (Element.Tree) e;
          hard.add(Shape.circle(tree.at(), tree.trunk().div(2).plus(BARE)));
        }
        default -> {
          // Beds and new paths are mulched themselves.
        }
      }
    }
    Shape all = Shape.union(hard);
    // Beyond the lot lies no lawn of this yard; its line itself counts as outside.
    return plan.lot()
        .map(
            lot ->
                lot.shape()
                    .grown(Length.metres(50))
                    .minus(lot.shape().shrunk(Length.millimetres(20))))
        .map(all::plus)
        .orElse(all);
  }
}
