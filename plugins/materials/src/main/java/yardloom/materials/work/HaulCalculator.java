package yardloom.materials.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.BillLine;
import yardloom.facts.Ways;
import yardloom.facts.YardFacts;
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
import yardloom.kernel.unit.Volume;
import yardloom.materials.calc.BarrowWay;
import yardloom.materials.calc.BulkVolume;
import yardloom.materials.calc.PilePlacer;
import yardloom.materials.model.Course;
import yardloom.materials.model.Haul;
import yardloom.materials.model.Material;
import yardloom.materials.model.MaterialKeys;
import yardloom.materials.model.Spread;
import yardloom.materials.model.Surface;
import yardloom.materials.model.TipPile;
import yardloom.materials.model.TipSpot;

/** Gives the heap on every tip spot and the barrow trips from it. */
public final class HaulCalculator implements Calculator {
  private static final Source WALK =
      Source.commonPractice("each barrow goes there full and comes back empty");

  @Override
  public String id() {
    return "materials.haul";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(MaterialFacts.SURFACES, YardFacts.BILL);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.WAYS);
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
    BarrowWay open = new BarrowWay(obstacles(plan));
    Ways ways = in.find(YardFacts.WAYS).orElse(Ways.NONE);
    for (TipSpot spot : spots) {
      order(in, spot.material())
          .forEach(
              order -> {
                TipPile pile = PilePlacer.place(spot, load(plan, spot, order));
                out.give(MaterialFacts.PILES, pile);
                hauls(
                        pile,
                        in.all(MaterialFacts.SURFACES),
                        new HaulWay.Finder(plan, pile, open, ways))
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

  private static List<Haul> hauls(TipPile pile, List<Surface> surfaces, HaulWay.Finder ways) {
    List<Haul> hauls = new ArrayList<>();
    for (Surface s : surfaces) {
      s.course(pile.spot().material())
          .ifPresent(course -> hauls.add(haul(pile.spot(), s, course, ways.to(s))));
    }
    return hauls;
  }

  private static Haul haul(TipSpot spot, Surface to, Course course, HaulWay way) {
    Derived<Integer> trips =
        Derived.by("trips = volume / barrow, rounded up", BulkVolume.SOURCE)
            .from("volume", course.volume())
            .from("barrow", spot.barrow(), spot.place())
            .gives(BulkVolume.pieces(course.volume().value(), spot.barrow()));
    Derived<Length> walk =
        Derived.by("walk = 2 × trips × way", WALK)
            .from("trips", trips)
            .from("way", way.oneWay())
            .gives(way.oneWay().value().times(2.0 * trips.value()));
    return new Haul(
        to, spot.material(), course.volume(), trips, way.line(), way.by(), way.oneWay(), walk);
  }
}
