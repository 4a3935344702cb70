package yardloom.work.haul;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import yardloom.facts.Ways;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Course;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.DropZone;
import yardloom.facts.mulch.Haul;
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
import yardloom.kernel.unit.Volume;

/** Gives the barrow trips from every heap. */
public final class HaulCalculator implements Calculator {
  private static final Source WALK =
      Source.commonPractice("each barrow goes there full and comes back empty");

  @Override
  public String id() {
    return "work.haul";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(YardFacts.SURFACES, YardFacts.PILES);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.WAYS);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.HAULS);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    List<DropPile> piles = in.all(YardFacts.PILES);
    if (piles.isEmpty()) {
      return;
    }
    Ways ways = in.find(YardFacts.WAYS).orElse(Ways.NONE);
    BarrowWay open = new BarrowWay(obstacles(plan, ways));
    for (DropPile pile : piles) {
      hauls(pile, in.all(YardFacts.SURFACES), new HaulWay.Finder(plan, pile, open, ways))
          .forEach(h -> out.give(YardFacts.HAULS, h));
    }
  }

  private static List<Shape> obstacles(Plan plan, Ways ways) {
    List<Shape> shapes = new ArrayList<>(ways.barriers());
    plan.all(Element.Building.class).forEach(b -> shapes.add(b.shape()));
    plan.all(Element.Structure.class).forEach(s -> shapes.add(s.shape()));
    return shapes;
  }

  private static List<Haul> hauls(DropPile pile, List<Surface> surfaces, HaulWay.Finder ways) {
    List<Haul> hauls = new ArrayList<>();
    for (Surface s : surfaces) {
      List<Course> lifts = s.lifts(pile.spot().material());
      if (!lifts.isEmpty()) {
        HaulWay way = ways.to(s);
        lifts.forEach(lift -> hauls.add(haul(pile.spot(), s, lift, way)));
      }
    }
    return hauls;
  }

  private static Haul haul(DropZone spot, Surface to, Course course, HaulWay way) {
    Derived<Volume> volume = course.volume().orElseThrow();
    Derived<Integer> trips =
        Derived.by("trips = volume / barrow, rounded up", WholePieces.SOURCE)
            .from("volume", volume)
            .from("barrow", spot.barrow(), spot.place())
            .gives(WholePieces.of(volume.value(), spot.barrow()));
    Derived<Length> walk =
        Derived.by("walk = 2 × trips × way", WALK)
            .from("trips", trips)
            .from("way", way.oneWay())
            .gives(way.oneWay().value().times(2.0 * trips.value()));
    return new Haul(
        to,
        spot.material(),
        course.phase(),
        volume,
        trips,
        way.line(),
        way.by(),
        way.oneWay(),
        walk);
  }
}
