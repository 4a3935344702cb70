package yardloom.sun.calc;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import yardloom.facts.Obstacle;
import yardloom.kernel.geom.Shape;

/**
 * The bodies that stand for an obstacle.
 *
 * <p>Prisms are cut into convex parts, cylinders are prisms of {@link #ROUND} sides of equal area,
 * roofs are the convex bodies of {@link Roofs}. What stands on the ground is carried down below the
 * lowest ground within {@value #REACH_M} m, so that no light passes under it on a slope. Heights
 * count from the ground at the middle of the footprint. Empty footprints and obstacles without
 * height give no bodies.
 */
final class Solids {
  static final int ROUND = 16;
  private static final double ROOTS_M = 0.01;
  private static final double REACH_M = 200;

  private final EquatorialFrame frame;
  private final Ground ground;

  Solids(EquatorialFrame frame, Ground ground) {
    this.frame = frame;
    this.ground = ground;
  }

  List<Body> of(Obstacle obstacle) {
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
      case PRISM -> prisms(obstacle.footprint(), bottomM, topM);
      case CYLINDER -> List.of(prism(circle(obstacle.footprint(), middle), bottomM, topM));
      case ELLIPSOID -> List.of(crown(bounds, middle, groundM + baseM, topM));
      case GABLE, HIP, SHED ->
          new Roofs(this, obstacle.form()).of(obstacle.footprint(), groundM + baseM, topM);
    };
  }

  List<Body> prisms(Shape footprint, double bottomM, double topM) {
    List<Body> bodies = new ArrayList<>();
    for (Coordinate[] ring : ConvexParts.of(footprint)) {
      bodies.add(prism(ring, bottomM, topM));
    }
    return bodies;
  }

  private Body prism(Coordinate[] ring, double bottomM, double topM) {
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
    return convex(corners, faces);
  }

  /**
   * A body from plan coordinates.
   *
   * @param corners x, y and height of each
   * @param faces corner numbers, counter-clockwise seen from outside
   */
  Body convex(double[][] corners, List<int[]> faces) {
    double[] vertices = new double[corners.length * 3];
    for (int i = 0; i < corners.length; i++) {
      place(corners[i][0], corners[i][1], corners[i][2], vertices, i * 3);
    }
    List<int[]> mirrored = new ArrayList<>();
    for (int[] face : faces) {
      int[] turned = new int[face.length];
      for (int i = 0; i < face.length; i++) {
        turned[i] = face[face.length - 1 - i];
      }
      mirrored.add(turned);
    }
    return new ConvexBody(vertices, mirrored);
  }

  private void place(double x, double y, double heightM, double[] into, int at) {
    into[at] = frame.x(x, y, heightM);
    into[at + 1] = frame.y(x, y, heightM);
    into[at + 2] = frame.z(x, y, heightM);
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

  private Body crown(Envelope bounds, Coordinate middle, double bottomM, double topM) {
    double[] centre = new double[3];
    place(middle.x, middle.y, (bottomM + topM) / 2, centre, 0);
    double[] zenith = new double[3];
    place(0, 0, 1, zenith, 0);
    double radiusM = (bounds.getWidth() + bounds.getHeight()) / 4;
    return new CrownBody(centre, zenith, radiusM, (topM - bottomM) / 2);
  }
}
