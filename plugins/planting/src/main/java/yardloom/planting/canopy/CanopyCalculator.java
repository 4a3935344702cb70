package yardloom.planting.canopy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Stage;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.recall.Piece;
import yardloom.kernel.unit.Length;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.placing.PlantPlaces;
import yardloom.planting.placing.Planting;
import yardloom.planting.placing.Thinning;

/**
 * Gives the shade of tall plants in beds for the first and fifth year and full size: each planting
 * above 3 ft is one block over the discs of its spread, from the ground to its height; crowns that
 * touch make one even block.
 *
 * <p>More than {@value #FEW} plants are one block over the ground they stand on, whether they touch
 * or not: the hull of their discs, kept as far from the edge of their ground as crowns keep. Where
 * crowns fill only a part of a row's side, the block lets the light of the rest through: a beam
 * through one row meets that part of leaves, a lower beam through more rows meets more. One body
 * for each of a thousand plants would be asked of every cell of the sun's grid.
 *
 * <p>Trees are plan elements and cast their shade through the plan; this adds none for them. A
 * block shades somewhat more than the plants it stands for. Light that passes: 0.3 in leaf, 0.7
 * without leaves, 1 where the plant dies back or is not there (from memory, unverified). Leaf
 * months are May to October, in the south November to April. Of full height and spread, shrubs and
 * vines have 0.3 in the first year and 0.8 in the fifth, herbs that return 0.5 and all, annuals all
 * (common practice, no source).
 */
public final class CanopyCalculator implements Calculator {
  /** Below this height a plant is not counted as an obstacle. */
  public static final Length LOW = Length.feet(3);

  /** Up to so many plants every crown that stands free has a body of its own. */
  static final int FEW = 50;

  private static final int SIDES = 12;
  private static final double EVEN = 1.2;
  private static final double IN_LEAF = 0.3;
  private static final double BARE = 0.7;

  @Override
  public String id() {
    return "planting.canopy";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PlantPlaces.KEY);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(YardFacts.OBSTACLES);
  }

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    boolean south = plan.isSouthern();
    for (List<Planting> crops : in.get(PlantPlaces.KEY).byGround()) {
      Planting p = tallest(crops);
      for (Stage stage : List.of(Stage.YEAR_1, Stage.YEAR_5, Stage.MATURE)) {
        double grown = GrownShare.share(p.plant(), stage);
        Length height = p.plant().size().height().middle().times(grown);
        if (height.compareTo(LOW) <= 0) {
          continue;
        }
        Length radius = p.plant().size().spread().middle().times(grown / 2);
        List<Point> at = standing(p, stage);
        out.give(
            YardFacts.OBSTACLES,
            new Obstacle(
                p.bed().id(),
                Obstacle.Form.PRISM,
                at.size() > FEW ? oneBlock(p, at, radius) : block(p, stage, new Crowns(at, radius)),
                Length.ZERO,
                height,
                passes(p.plant(), south, at.size() > FEW ? filled(p, radius) : 1),
                stage));
      }
    }
  }

  /** Of crops that follow each other on one ground, the tallest shades for all. */
  private static Planting tallest(List<Planting> crops) {
    return Collections.max(crops, Comparator.comparing(p -> p.plant().size().height().middle()));
  }

  /** What stands once it is thinned, if it is; by the fifth year that is done. */
  private static List<Point> standing(Planting p, Stage stage) {
    return stage == Stage.YEAR_1
        ? p.at()
        : Thinning.of(p).map(t -> Thinning.kept(p, t)).orElse(p.at());
  }

  /** Plants of one size. */
  private record Crowns(List<Point> at, Length radius) {}

  private static Shape block(Planting p, Stage stage, Crowns crowns) {
    return Piece.of(
        p.plant().name() + " in " + p.bed().id() + " " + stage,
        crowns,
        c -> block(c.at(), c.radius()));
  }

  /** The discs around plants; what touches is filled up to its hull if that adds little. */
  private static Shape block(List<Point> at, Length radius) {
    Shape discs = Shape.union(at.stream().map(c -> disc(c, radius)).toList());
    List<Shape> parts = new ArrayList<>();
    for (Shape part : discs.parts()) {
      Shape hull = Shape.of(part.jts().convexHull());
      boolean even = hull.area().squareMetres() <= EVEN * part.area().squareMetres();
      parts.add(even ? hull : part);
    }
    return Shape.union(parts);
  }

  /** The hull of all discs, as far inside the edge of the ground as the crowns are. */
  private static Shape oneBlock(Planting p, List<Point> at, Length radius) {
    List<Shape> corners = hull(at).stream().map(c -> disc(c, radius)).toList();
    Shape hull = Shape.of(Shape.union(corners).jts().convexHull());
    return hull.and(p.ground().grown(radius.minus(p.spacing().div(2))));
  }

  private static List<Point> hull(List<Point> at) {
    Coordinate[] places = at.stream().map(Point::coordinate).toArray(Coordinate[]::new);
    Coordinate[] corners =
        new ConvexHull(places, new GeometryFactory()).getConvexHull().getCoordinates();
    return Arrays.stream(corners).map(c -> Point.metres(c.x, c.y)).toList();
  }

  /** What of a row's side its crowns fill. */
  private static double filled(Planting p, Length radius) {
    return Math.min(1, radius.times(2).ratioTo(p.spacing()));
  }

  /** A regular polygon of the disc's area. */
  private static Shape disc(Point centre, Length radius) {
    double corner = 2 * Math.PI / SIDES;
    double reach = radius.metres() * Math.sqrt(corner / StrictMath.sin(corner));
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      ring.add(
          centre.moved(
              Length.metres(reach * StrictMath.sin(i * corner)),
              Length.metres(reach * StrictMath.cos(i * corner))));
    }
    return Shape.polygon(ring);
  }

  private static List<Double> passes(Plant plant, boolean south, double filled) {
    double winter =
        switch (plant.growth().season()) {
          case EVERGREEN -> IN_LEAF;
          case DECIDUOUS -> plant.growth().form().isWoody() ? BARE : 1;
          case ANNUAL, TENDER_ANNUAL -> 1;
        };
    List<Double> months = new ArrayList<>();
    for (int m = 0; m < 12; m++) {
      boolean summer = m >= 4 && m <= 9;
      months.add(1 - filled * (1 - (summer != south ? IN_LEAF : winter)));
    }
    return months;
  }
}
