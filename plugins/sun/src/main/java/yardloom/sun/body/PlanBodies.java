package yardloom.sun.body;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import yardloom.facts.Obstacle;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementKind;

/**
 * The bodies that stand for an obstacle, in plan metres.
 *
 * <p>Prisms are cut into convex parts, cylinders are prisms of {@link #ROUND} sides of equal area,
 * roofs are the convex bodies of {@link RoofBodies}. What stands on the ground is carried down
 * below the lowest ground within {@value #REACH_M} m, so that no light passes under it on a slope.
 * Heights count from the ground at the middle of the footprint; tops of fences and plants follow
 * the ground. Outlines of more than {@value #MANY} corners are simplified to {@value #SIMPLE_M} m.
 * Empty footprints and obstacles without height give no bodies.
 *
 * <p>References: own construction.
 */
public final class PlanBodies {
  static final int ROUND = 16;
  private static final double ROOTS_M = 0.01;
  private static final double REACH_M = 200;
  private static final int MANY = 40;
  private static final double SIMPLE_M = 0.03;

  private PlanBodies() {}

  public static List<PlanBody> of(Obstacle obstacle, Ground ground) {
    if (obstacle.footprint().isEmpty() || obstacle.top().compareTo(obstacle.base()) <= 0) {
      return List.of();
    }
    Envelope bounds = obstacle.footprint().bounds();
    Coordinate middle = bounds.centre();
    double groundM = ground.heightM(middle.x, middle.y);
    double baseM = obstacle.base().metres();
    double topM = groundM + obstacle.top().metres();
    double bottomM = baseM == 0 ? groundM - ROOTS_M - REACH_M * ground.steepest() : groundM + baseM;
    return switch (obstacle.form()) {
      case PRISM ->
          obstacle.of().kind() == ElementKind.FENCE || obstacle.of().kind() == ElementKind.BED
              ? along(obstacle, ground)
              : prisms(obstacle.footprint(), bottomM, topM);
      case CYLINDER -> List.of(prism(circle(obstacle.footprint(), middle), bottomM, topM));
      case ELLIPSOID ->
          List.of(
              new PlanBody.Egg(
                  middle.x,
                  middle.y,
                  groundM + baseM,
                  topM,
                  (bounds.getWidth() + bounds.getHeight()) / 4));
      case GABLE, HIP, SHED ->
          new RoofBodies(obstacle.form()).of(obstacle.footprint(), groundM + baseM, topM);
    };
  }

  static List<PlanBody> prisms(Shape footprint, double bottomM, double topM) {
    List<PlanBody> bodies = new ArrayList<>();
    for (Coordinate[] ring : ConvexParts.of(simple(footprint))) {
      bodies.add(prism(ring, bottomM, topM));
    }
    return bodies;
  }

  private static List<PlanBody> along(Obstacle obstacle, Ground ground) {
    List<PlanBody> bodies = new ArrayList<>();
    double baseM = obstacle.base().metres();
    for (Coordinate[] ring : ConvexParts.of(simple(obstacle.footprint()))) {
      PlanBody.Hull flat = prism(ring, baseM == 0 ? -ROOTS_M : baseM, obstacle.top().metres());
      for (double[] corner : flat.corners()) {
        corner[2] += ground.heightM(corner[0], corner[1]);
      }
      bodies.add(flat);
    }
    return bodies;
  }

  private static Shape simple(Shape footprint) {
    return footprint.jts().getNumPoints() <= MANY
        ? footprint
        : Shape.of(TopologyPreservingSimplifier.simplify(footprint.jts(), SIMPLE_M));
  }

  private static PlanBody.Hull prism(Coordinate[] ring, double bottomM, double topM) {
    int n = ring.length;
    double[][] corners = new double[2 * n][];
    int[] floor = new int[n];
    int[] lid = new int[n];
    List<int[]> faces = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners[i] = new double[] {ring[i].x, ring[i].y, bottomM};
      corners[n + i] = new double[] {ring[i].x, ring[i].y, topM};
      int next = (i + 1) % n;
      faces.add(new int[] {i, next, n + next, n + i});
      lid[i] = n + i;
      floor[n - 1 - i] = i;
    }
    faces.add(lid);
    faces.add(floor);
    return new PlanBody.Hull(corners, faces);
  }

  private static Coordinate[] circle(Shape footprint, Coordinate middle) {
    double corner = 2 * Math.PI / ROUND;
    double radiusM =
        Math.sqrt(footprint.area().squareMetres() / (0.5 * ROUND * StrictMath.sin(corner)));
    Coordinate[] ring = new Coordinate[ROUND];
    for (int i = 0; i < ROUND; i++) {
      ring[i] =
          new Coordinate(
              middle.x + radiusM * StrictMath.cos(i * corner),
              middle.y + radiusM * StrictMath.sin(i * corner));
    }
    return ring;
  }
}
