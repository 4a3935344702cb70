package yardloom.planting.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import yardloom.kernel.geom.Clearance;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Attributes.Entry;
import yardloom.kernel.plan.Element;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.placing.formula.AreaCut;
import yardloom.planting.placing.formula.BedShares;
import yardloom.planting.placing.formula.Lattice;
import yardloom.planting.placing.formula.Layout;
import yardloom.planting.placing.formula.RingPlaces;
import yardloom.planting.placing.formula.TallKinds;
import yardloom.planting.placing.formula.TieredMix;

/**
 * The plants of one bed whose lines say where they stand: rings, rows and drifts take the ground
 * within half a spacing of each plant, before all else; what is mixed shares the rest of the bed on
 * one lattice of the widest spacing among its kinds, the tall ones nearest the pole.
 */
final class PlacedPlants {
  private final Plan plan;
  private final Element.Bed bed;
  private final List<Planting> plantings = new ArrayList<>();
  private Shape rest;

  private PlacedPlants(Plan plan, Element.Bed bed) {
    this.plan = plan;
    this.bed = bed;
    rest = bed.shape();
  }

  static PlacedPlants of(Plan plan, Element.Bed bed) {
    PlacedPlants placed = new PlacedPlants(plan, bed);
    List<Entry<Placed>> mixed = new ArrayList<>();
    for (Entry<Placed> line : bed.attributes().all(PlantingKeys.PLACED)) {
      if (line.value().where() instanceof Placement.Mixed) {
        mixed.add(line);
      } else {
        placed.single(line);
      }
    }
    if (!mixed.isEmpty()) {
      placed.mix(mixed);
    }
    return placed;
  }

  List<Planting> plantings() {
    return List.copyOf(plantings);
  }

  /** What is left for kinds that take a slice of the bed. */
  Shape rest() {
    return rest;
  }

  private void single(Entry<Placed> line) {
    PlantChoice choice = line.value().choice();
    Plant plant = PlantCatalogue.of(plan).plant(choice.plant());
    Length spacing = choice.spacing().orElseGet(() -> plant.size().inRow().middle());
    List<Point> wanted = wanted(line, spacing);
    Clearance inside = Clearance.within(bed.shape());
    Predicate<Point> free = rest.insideTest();
    // As on a lattice, each keeps half a spacing from the bed's edge, and stands on free ground; a
    // row may stand nearer, as nothing grows beyond the edge.
    boolean isRow = line.value().where() instanceof Placement.Along;
    Length least = spacing.times((isRow ? Lattice.ROW_EDGE : 0.5) - 1e-6);
    List<Point> at =
        wanted.stream().filter(p -> inside.of(p).compareTo(least) >= 0 && free.test(p)).toList();
    if (line.value().where() instanceof Placement.Drift drift) {
      at = RingPlaces.nearest(at, drift.about(), drift.count());
    }
    Shape ground =
        Shape.union(at.stream().map(p -> Shape.circle(p, spacing.div(2))).toList()).and(rest);
    Optional<Placement> where = Optional.of(line.value().where());
    plantings.add(
        new Planting(bed, line.place(), choice, plant, ground, spacing, spacing, at, where));
    rest = ground.isEmpty() ? rest : rest.minus(ground);
  }

  private List<Point> wanted(Entry<Placed> line, Length spacing) {
    Placement where = line.value().where();
    if (where instanceof Placement.Ring ring) {
      return RingPlaces.round(tree(line, ring.tree()).at(), ring.radius(), ring.count());
    }
    if (where instanceof Placement.Points points) {
      return points.at();
    }
    if (where instanceof Placement.Along along) {
      return RingPlaces.along(along.line(), spacing);
    }
    return staggered(line.place(), spacing, Lattice.rowSpacing(spacing, Layout.STAGGERED));
  }

  private List<Point> staggered(SourceRef place, Length spacing, Length rows) {
    return Planting.places(bed, place, rest, spacing, rows, Layout.STAGGERED);
  }

  private Element.Tree tree(Entry<Placed> line, String name) {
    List<Element.Tree> trees = plan.all(Element.Tree.class);
    return trees.stream()
        .filter(t -> t.id().name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new PlanException(
                    ProblemCode.UNKNOWN_WORD,
                    line.place(),
                    "there is no tree '"
                        + name
                        + "'."
                        + Nearest.hint(name, trees.stream().map(t -> t.id().name()).toList())));
  }

  private void mix(List<Entry<Placed>> lines) {
    List<Plant> plants =
        lines.stream().map(l -> PlantCatalogue.of(plan).plant(l.value().choice().plant())).toList();
    Length spacing = Length.ZERO;
    for (int k = 0; k < plants.size(); k++) {
      Plant plant = plants.get(k);
      Length own =
          lines.get(k).value().choice().spacing().orElseGet(() -> plant.size().inRow().middle());
      spacing = own.compareTo(spacing) > 0 ? own : spacing;
    }
    Length rows = Lattice.rowSpacing(spacing, Layout.STAGGERED);
    List<Point> places = staggered(lines.get(0).place(), spacing, rows);
    List<Double> weights = weights(lines, places.size());
    Optional<Poleward> pole = Poleward.of(plan);
    List<List<Integer>> tiers = tiers(pole, plants);
    List<Double> polewardM =
        places.stream().map(p -> pole.map(way -> way.metres(p)).orElse(0.0)).toList();
    List<Integer> dealt = TieredMix.of(polewardM, weights, tiers);
    List<Shape> grounds = grounds(pole, weights, tiers);
    for (int k = 0; k < plants.size(); k++) {
      List<Point> at = new ArrayList<>();
      for (int i = 0; i < places.size(); i++) {
        if (dealt.get(i) == k) {
          at.add(places.get(i));
        }
      }
      Entry<Placed> line = lines.get(k);
      plantings.add(
          new Planting(
              bed,
              line.place(),
              line.value().choice(),
              plants.get(k),
              grounds.get(k),
              spacing,
              rows,
              at,
              Optional.of(line.value().where())));
    }
    rest = Shape.EMPTY;
  }

  /** Kinds by height where the plan says where the sun stands; else all alike. */
  private static List<List<Integer>> tiers(Optional<Poleward> pole, List<Plant> plants) {
    return pole.isEmpty()
        ? List.of(IntStream.range(0, plants.size()).boxed().toList())
        : TallKinds.tiers(plants.stream().map(p -> p.size().height().middle()).toList());
  }

  /** The ground of each kind: its part of that of its tier, which the tallest have at the pole. */
  private List<Shape> grounds(
      Optional<Poleward> pole, List<Double> weights, List<List<Integer>> tiers) {
    double all = weights.stream().mapToDouble(w -> w).sum();
    List<Double> shares = tiers.stream().map(t -> sum(t, weights) / all).toList();
    List<Shape> bands =
        tiers.size() < 2 ? List.of(rest) : AreaCut.cut(rest, pole.get().bearing(), shares);
    Shape[] grounds = new Shape[weights.size()];
    for (int t = 0; t < tiers.size(); t++) {
      List<Integer> tier = tiers.get(t);
      double of = sum(tier, weights);
      List<Shape> cut =
          BedShares.cut(
              bands.get(t), tier.stream().map(k -> Optional.of(weights.get(k) / of)).toList());
      for (int i = 0; i < tier.size(); i++) {
        grounds[tier.get(i)] = cut.get(i);
      }
    }
    return List.of(grounds);
  }

  private static double sum(List<Integer> tier, List<Double> weights) {
    return tier.stream().mapToDouble(weights::get).sum();
  }

  /** What each kind weighs in the mix: its count, its share, or an even part of what is left. */
  private static List<Double> weights(List<Entry<Placed>> lines, int places) {
    List<Placement.Mixed> mixed =
        lines.stream().map(l -> (Placement.Mixed) l.value().where()).toList();
    double given = 0;
    int open = 0;
    List<Double> shares = new ArrayList<>();
    for (Placement.Mixed m : mixed) {
      double share =
          m.count()
              // Where none has room, each still has its part of the ground.
              .map(c -> places == 0 ? 1.0 / mixed.size() : (double) c / places)
              .or(m::share)
              .orElse(-1.0);
      shares.add(share);
      given += Math.max(0, share);
      open += share < 0 ? 1 : 0;
    }
    if (given > 1 + 1e-9) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          lines.get(0).place(),
          "the mix asks for more plants than the "
              + places
              + " that this bed holds at the widest spacing of its kinds; lower shares or counts");
    }
    double left = open == 0 ? 0 : (1 - given) / open;
    if (open > 0 && left < 1e-9) {
      Entry<Placed> none = lines.get(shares.indexOf(-1.0));
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          none.place(),
          "the other kinds of the mix leave no place for '"
              + none.value().choice().plant()
              + "'; lower their shares or counts");
    }
    // What nobody asked for goes to all in their proportion: the lattice is filled.
    return shares.stream().map(s -> s < 0 ? left : s).toList();
  }
}
