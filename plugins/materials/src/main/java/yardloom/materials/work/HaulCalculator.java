package yardloom.materials.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.calc.BarrowWay;
import yardloom.materials.calc.BulkVolume;
import yardloom.materials.calc.PilePlacer;
import yardloom.materials.model.Haul;
import yardloom.materials.model.Material;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.Spread;
import yardloom.materials.model.Surface;
import yardloom.materials.model.TipPile;
import yardloom.materials.model.TipSpot;

/** Gives the heap on every tip spot and the barrow trips from it. */
public final class HaulCalculator implements Calculator {
  @Override
  public String id() {
    return "materials.haul";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(MaterialFacts.SURFACES, YardFacts.BILL);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(MaterialFacts.PILES, MaterialFacts.HAULS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<TipSpot> spots =
        plan.attributes().all(MaterialKeys.TIP_SPOT).stream().map(e -> e.value()).toList();
    if (spots.isEmpty()) {
      return;
    }
    BarrowWay ways = new BarrowWay(obstacles(plan));
    for (TipSpot spot : spots) {
      order(in, spot.material())
          .forEach(
              order -> {
                TipPile pile = PilePlacer.place(spot, load(plan, spot, order));
                out.give(MaterialFacts.PILES, pile);
                hauls(pile, in.all(MaterialFacts.SURFACES), ways)
                    .forEach(h -> out.give(MaterialFacts.HAULS, h));
              });
    }
  }

  private static List<Shape> obstacles(Plan plan) {
    List<Shape> shapes = new ArrayList<>();
    plan.all(Element.Building.class).forEach(b -> shapes.add(b.shape()));
    plan.all(Element.Structure.class).forEach(s -> shapes.add(s.shape()));
    return shapes;
  }

  private static List<Derived<Volume>> order(Facts in, Material material) {
    List<Derived<Volume>> orders = new ArrayList<>();
    for (BillLine line : in.all(YardFacts.BILL)) {
      if (line.item().equals(material.title()) && line.order().value() instanceof Volume v) {
        orders.add(line.order().map(x -> v));
      }
    }
    return orders;
  }

  /** Trucks come one after the other; the heap to plan for is one likely load, or the order. */
  private static Derived<Volume> load(Plan plan, TipSpot spot, Derived<Volume> order) {
    Spread truck = LocalData.of(plan).cubicYardsPerLoad(spot.material().title());
    Volume load = Volume.cubicYards(truck.likely());
    return Derived.by("heap = the smaller of one likely load and the order", truck.source())
        .from("order", order)
        .from("likely load", load)
        .gives(load.min(order.value()));
  }

  private static List<Haul> hauls(TipPile pile, List<Surface> surfaces, BarrowWay ways) {
    List<Haul> hauls = new ArrayList<>();
    Volume barrow = pile.spot().barrow();
    for (Surface s : surfaces) {
      s.course(pile.spot().material())
          .ifPresent(
              course -> {
                Line route = ways.between(pile.middle(), s.shape().heart());
                Length way = route.length();
                Derived<Integer> trips =
                    Derived.by("trips = volume / barrow, rounded up", BulkVolume.SOURCE)
                        .from("volume", course.volume())
                        .from("barrow", barrow, pile.spot().place())
                        .gives(BulkVolume.pieces(course.volume().value(), barrow));
                Derived<Length> oneWay =
                    Derived.by("way round buildings × detour", BarrowWay.SOURCE)
                        .from("way from heap to the middle of the surface", way)
                        .from("detour", pile.spot().detour(), pile.spot().place())
                        .gives(way.times(pile.spot().detour()));
                Derived<Length> walk =
                    Derived.by("walk = 2 × trips × way", BarrowWay.SOURCE)
                        .from("trips", trips)
                        .from("way", oneWay)
                        .gives(oneWay.value().times(2.0 * trips.value()));
                hauls.add(
                    new Haul(
                        s, pile.spot().material(), course.volume(), trips, route, oneWay, walk));
              });
    }
    return hauls;
  }
}
