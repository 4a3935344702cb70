package yardloom.materials.pile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.DropZone;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.TruckLane;
import yardloom.facts.region.Spread;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.load.BulkRates;

/** Gives the heap on every drop zone. */
public final class PileCalculator implements Calculator {
  /** On the plan, any number. */
  public static final AttributeKey<DropZone> SPOTS =
      new AttributeKey<>("materials.drop-zone", DropZone.class);

  /** A lane so near to a spot leads to it. */
  private static final Length AT_THE_SPOT = Length.feet(2);

  @Override
  public String id() {
    return "materials.piles";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.BILL);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.REGION);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.PILES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    BulkRates rates = BulkRates.of(plan, in.find(YardFacts.REGION));
    for (var entry : plan.attributes().all(SPOTS)) {
      DropZone spot = onLane(plan, entry.value());
      largest(in, spot.material())
          .ifPresent(
              order -> out.give(YardFacts.PILES, PilePlacer.place(spot, load(rates, spot, order))));
    }
  }

  /** A lane for trucks that ends at the spot is its way, where it has none of its own. */
  private static DropZone onLane(Plan plan, DropZone spot) {
    if (spot.way().isPresent()) {
      return spot;
    }
    return plan.all(Element.Paving.class).stream()
        .filter(lane -> lane.shape().distance(spot.shape()).compareTo(AT_THE_SPOT) <= 0)
        .flatMap(lane -> lane.attributes().get(TruckLane.KEY).stream())
        .findFirst()
        .map(spot::by)
        .orElse(spot);
  }

  /** Chips for two phases come one after the other; the heap to plan for is the larger one. */
  private static Optional<Derived<Volume>> largest(Facts in, Material material) {
    List<Derived<Volume>> orders = new ArrayList<>();
    for (BillLine line : in.all(YardFacts.BILL)) {
      if (line.item().equals(material.title()) && line.order().value() instanceof Volume v) {
        orders.add(line.order().map(x -> v));
      }
    }
    return orders.stream().max(Comparator.comparing(Derived::value));
  }

  /** Trucks come one after the other; the heap to plan for is one likely load, or the order. */
  private static Derived<Volume> load(BulkRates rates, DropZone spot, Derived<Volume> order) {
    Spread truck = rates.cubicYardsPerLoad(spot.material().title());
    Volume load = Volume.cubicYards(truck.likely());
    return Derived.by("heap = the smaller of one likely load and the order", truck.source())
        .from("order", order)
        .from("likely load", load)
        .gives(load.min(order.value()));
  }
}
