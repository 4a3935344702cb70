package yardloom.work.haul;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import yardloom.facts.Ways;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Carry;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.DropZone;
import yardloom.facts.mulch.Haul;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.work.WorkPhase;
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

/**
 * Gives the barrow trips from every heap: layers of sheet mulch, and the rock, gravel, sand and
 * soil of what is built. What no spot is for comes on the first one.
 */
public final class HaulCalculator implements Calculator {
  private static final Source WALK =
      Source.commonPractice("each barrow goes there full and comes back empty");

  private static final Source HEAVY =
      Source.read(
          "Questions about deliveries: a cubic yard is nine barrows of 3 cu ft",
          "question page of a bulk-soil dealer",
          0,
          "barrows");
  private static final Volume MOST_HEAVY = Volume.cubicFeet(3);

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
    return Set.of(YardFacts.WAYS, YardFacts.CARRIES);
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
    List<Shape> walls = walls(plan, ways);
    BarrowWay round = new BarrowWay(walls);
    BarrowWay open = new BarrowWay(walls, beds(plan));
    for (DropPile pile : piles) {
      HaulWay.Finder finder = new HaulWay.Finder(plan, pile, round, open, ways);
      for (Material material : bulk(in.all(YardFacts.SURFACES))) {
        if (DropPile.taking(material.title(), piles).filter(pile::equals).isPresent()) {
          layers(pile.spot(), material, in.all(YardFacts.SURFACES), finder, out);
        }
      }
      if (pile == piles.get(0)) {
        in.all(YardFacts.CARRIES).forEach(c -> out.give(YardFacts.HAULS, haul(pile, c, finder)));
      }
    }
  }

  /**
   * What comes loose by the yard, from the top down: chips, materials of the plan's own, compost.
   */
  private static List<Material> bulk(List<MulchSurface> surfaces) {
    return surfaces.stream()
        .flatMap(s -> s.courses().stream())
        .filter(c -> c.volume().isPresent())
        .map(LaidLayer::material)
        .distinct()
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  private static List<Shape> walls(Plan plan, Ways ways) {
    List<Shape> shapes = new ArrayList<>(ways.barriers());
    plan.all(Element.Building.class).forEach(b -> shapes.add(b.shape()));
    plan.all(Element.Structure.class).forEach(s -> shapes.add(s.shape()));
    return shapes;
  }

  private static List<Shape> beds(Plan plan) {
    return plan.all(Element.Bed.class).stream().map(Element.Bed::shape).toList();
  }

  private static void layers(
      DropZone spot, Material material, List<MulchSurface> to, HaulWay.Finder ways, Sink out) {
    for (MulchSurface s : to) {
      List<LaidLayer> lifts =
          s.lifts(material).stream().filter(c -> c.volume().isPresent()).toList();
      if (!lifts.isEmpty()) {
        HaulWay way = ways.to(s);
        for (LaidLayer lift : lifts) {
          Derived<Integer> trips = trips(lift.volume().orElseThrow(), spot, spot.barrow());
          out.give(
              YardFacts.HAULS,
              haul(
                  s.title(),
                  spot,
                  material.title(),
                  lift.phase(),
                  lift.volume().orElseThrow(),
                  trips,
                  way));
        }
      }
    }
  }

  private static Haul haul(DropPile pile, Carry carry, HaulWay.Finder ways) {
    DropZone spot = pile.spot();
    Volume barrow = spot.barrow().div(2).min(MOST_HEAVY);
    return haul(
        carry.to(),
        spot,
        carry.item(),
        carry.phase(),
        carry.volume(),
        trips(carry.volume(), spot, barrow),
        ways.to(carry.ground()));
  }

  private static Derived<Integer> trips(Derived<Volume> volume, DropZone spot, Volume barrow) {
    return Derived.by(
            "trips = volume / barrow, rounded up",
            barrow.equals(spot.barrow()) ? WholePieces.SOURCE : HEAVY)
        .from("volume", volume)
        .from("barrow", barrow, spot.place())
        .gives(WholePieces.of(volume.value(), barrow));
  }

  private static Haul haul(
      String to,
      DropZone spot,
      String item,
      WorkPhase phase,
      Derived<Volume> volume,
      Derived<Integer> trips,
      HaulWay way) {
    Derived<Length> walk =
        Derived.by("walk = 2 × trips × way", WALK)
            .from("trips", trips)
            .from("way", way.oneWay())
            .gives(way.oneWay().value().times(2.0 * trips.value()));
    return new Haul(
        to, spot.name(), item, phase, volume, trips, way.line(), way.by(), way.oneWay(), walk);
  }
}
