package yardloom.materials.built;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.built.Barrier;
import yardloom.facts.built.Flight;
import yardloom.facts.built.Gate;
import yardloom.facts.built.Pad;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.materials.goods.PaverField;

/**
 * Gives what is bought and done for fences, gates, hedges, walls, steps, paving and structures that
 * are to be built. What the plan counts itself, by an item or a task of its own or by `pavers`, is
 * left to that; swales are earthwork.
 */
public final class BuiltCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.built";
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.OWN_COUNTED);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.BILL, YardFacts.JOBS, YardFacts.CARRIES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    Set<ElementId> counted = new HashSet<>(in.all(YardFacts.OWN_COUNTED));
    Tally.Loose loose = new Tally.Loose();
    for (Element element : plan.elements()) {
      if (!element.stands() && !counted.contains(element.id())) {
        count(plan, element, new Tally(out, Optional.of(element.id()), plan.info().units(), loose));
      }
    }
    for (Attributes.Entry<Gate> entry : plan.attributes().all(Gate.KEY)) {
      gate(plan, entry.value(), counted, out, loose);
    }
    loose.give(out, plan.info().units());
  }

  private static void count(Plan plan, Element element, Tally tally) {
    if (element instanceof Element.Fence fence) {
      fence.attributes().get(Barrier.KEY).ifPresent(how -> barrier(plan, fence, how, tally));
    } else if (element instanceof Element.Paving paving) {
      Optional<Flight> flight = paving.attributes().get(Flight.KEY);
      if (flight.isPresent()) {
        Grounds.steps(paving, flight.get(), tally);
      } else if (PaverField.on(plan, paving).isEmpty()) {
        Grounds.paving(paving, tally);
      }
    } else if (element instanceof Element.Structure built && built.height().metres() > 0) {
      Length pad = built.attributes().get(Pad.KEY).map(Pad::depth).orElse(Length.ZERO);
      Grounds.structure(built, pad, tally);
    }
  }

  private static void barrier(Plan plan, Element.Fence fence, Barrier how, Tally tally) {
    switch (how.made()) {
      case HEDGE -> Fences.hedge(fence, how, tally);
      case WALL, RETAINING -> Walls.wall(fence, how, tally);
      case BOARDS, MESH -> Fences.fence(plan, fence, how, tally);
    }
  }

  /** A gate is new where it says so, else where its fence is. */
  private static void gate(
      Plan plan, Gate gate, Set<ElementId> counted, Sink out, Tally.Loose loose) {
    List<Element.Fence> fences =
        plan.all(Element.Fence.class).stream().filter(f -> Fences.isIn(gate, f.line())).toList();
    Optional<Element.Fence> built = fences.stream().filter(f -> !f.stands()).findFirst();
    boolean stands = gate.standing().orElse(built.isEmpty());
    Optional<ElementId> of = built.or(() -> fences.stream().findFirst()).map(Element.Fence::id);
    if (!stands && of.filter(counted::contains).isEmpty()) {
      Fences.gate(gate, new Tally(out, of, plan.info().units(), loose));
    }
  }
}
