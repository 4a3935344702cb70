package yardloom.site.access;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.Ways;
import yardloom.facts.YardFacts;
import yardloom.facts.built.Flight;
import yardloom.facts.built.Gate;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.geom.WayNetwork;
import yardloom.kernel.plan.EdgeRole;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Element.PathUse;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.site.path.PathStandard;

/**
 * The paths, hard surfaces and mulched ground of a plan, as the hauls and the ways to the beds use
 * them: cut where a wall or a fence without a gate stands across them, or where they run over a
 * neighbour's ground. Mulched ground is walked half a barrow's width off the beds in it.
 */
public final class WaysCalculator implements Calculator {
  /** Two ways on either side of a fence must lie further apart than ways that touch. */
  private static final Length CLEAR = Length.millimetres(30);

  private static final Length BEYOND = Length.metres(1.5);

  @Override
  public String id() {
    return "site.ways";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of();
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.WAYS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    out.give(YardFacts.WAYS, of(plan));
  }

  static Ways of(Plan plan) {
    List<Shape> barriers = barriers(plan, barrowWidth(plan));
    List<Shape> onFoot = barriers(plan, Length.ZERO);
    List<WayNetwork.Way> foot = new ArrayList<>(ways(plan, Length.ZERO, onFoot));
    foot.addAll(mulched(plan, Length.ZERO, onFoot));
    List<WayNetwork.Way> barrow = new ArrayList<>(ways(plan, barrowWidth(plan), barriers));
    List<WayNetwork.Way> rolled = mulched(plan, barrowWidth(plan), barriers);
    barrow.addAll(rolled);
    // Who can roll there can walk there: no way on foot is longer than with a barrow.
    foot.addAll(rolled);
    return new Ways(barrow, foot, barriers);
  }

  /** The width that a barrow needs in this plan. */
  static Length barrowWidth(Plan plan) {
    return PathStandard.of(plan, PathUse.BARROW).least().value();
  }

  /**
   * Walls, fences and hedges but for a barrow's width to each side of a gate that is wide enough,
   * and neighbours.
   */
  private static List<Shape> barriers(Plan plan, Length leastWidth) {
    List<Shape> barriers = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> barriers.add(b.shape()));
    List<Shape> gates =
        plan.attributes().all(Gate.KEY).stream()
            .filter(gate -> !gate.value().width().isShortOf(leastWidth))
            .map(gate -> Shape.circle(gate.value().at(), barrowWidth(plan)))
            .toList();
    Shape open = Shape.union(gates);
    plan.all(Element.Fence.class).forEach(f -> barriers.add(f.shape().minus(open)));
    plan.lot().ifPresent(lot -> neighbours(lot).forEach(n -> barriers.add(n.minus(open))));
    return barriers.stream().filter(b -> !b.isEmpty()).toList();
  }

  /** A strip beyond each side and rear line: nobody carries over a neighbour's ground. */
  private static List<Shape> neighbours(Lot lot) {
    List<Shape> strips = new ArrayList<>();
    for (Lot.Edge edge : lot.edges()) {
      if (edge.role() == EdgeRole.SIDE || edge.role() == EdgeRole.REAR) {
        // Sides run counter-clockwise: beyond the lot lies on the left of the way back.
        strips.add(edge.line().reversed().strip(Length.ZERO, BEYOND).minus(lot.shape()));
      }
    }
    return strips;
  }

  private static List<WayNetwork.Way> ways(Plan plan, Length leastWidth, List<Shape> barriers) {
    Shape cut = Shape.union(barriers).grown(CLEAR);
    List<WayNetwork.Way> ways = new ArrayList<>();
    for (Element.Path path : plan.all(Element.Path.class)) {
      if (!path.width().isShortOf(leastWidth)) {
        ways.addAll(new WayNetwork.Way(path.shape(), Optional.of(path.line())).without(cut));
      }
    }
    for (Element.Paving paving : plan.all(Element.Paving.class)) {
      if (leastWidth.metres() > 0 && paving.attributes().get(Flight.KEY).isPresent()) {
        continue; // Nobody rolls a load up steps.
      }
      ways.addAll(new WayNetwork.Way(paving.shape(), Optional.empty()).without(cut));
    }
    return ways;
  }

  /** Mulched ground half a width off the beds and what is built in it. */
  private static List<WayNetwork.Way> mulched(Plan plan, Length leastWidth, List<Shape> barriers) {
    List<WayNetwork.Way> ways = new ArrayList<>();
    Shape cut = Shape.union(barriers).grown(CLEAR);
    Shape taken = taken(plan).grownWithCorners(leastWidth.div(2));
    for (Element.MulchedGround ground : plan.all(Element.MulchedGround.class)) {
      Shape free = ground.shape().minus(taken);
      free.parts()
          .forEach(part -> ways.addAll(new WayNetwork.Way(part, Optional.empty()).without(cut)));
    }
    return ways;
  }

  /** What lies or stands in mulched ground that nobody walks over. */
  private static Shape taken(Plan plan) {
    List<Shape> taken = new ArrayList<>();
    plan.all(Element.Bed.class).forEach(b -> taken.add(b.shape()));
    plan.all(Element.Structure.class).forEach(b -> taken.add(b.shape()));
    return Shape.union(taken);
  }
}
