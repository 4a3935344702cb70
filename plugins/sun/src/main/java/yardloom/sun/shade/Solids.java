package yardloom.sun.shade;

import java.util.ArrayList;
import java.util.List;
import yardloom.facts.Obstacle;
import yardloom.sun.body.Ground;
import yardloom.sun.body.PlanBodies;
import yardloom.sun.body.PlanBody;

/**
 * The bodies of an obstacle, turned into the equatorial frame. That frame is left-handed, so faces
 * that run counter-clockwise on the plan are turned about.
 *
 * <p>References: see {@link EquatorialFrame}.
 */
final class Solids {
  private final EquatorialFrame frame;
  private final Ground ground;

  Solids(EquatorialFrame frame, Ground ground) {
    this.frame = frame;
    this.ground = ground;
  }

  List<Body> of(Obstacle obstacle) {
    List<Body> bodies = new ArrayList<>();
    for (PlanBody body : PlanBodies.of(obstacle, ground)) {
      if (body instanceof PlanBody.Hull hull) {
        bodies.add(polyhedron(hull));
      } else if (body instanceof PlanBody.Egg egg) {
        bodies.add(crown(egg));
      }
    }
    return bodies;
  }

  private Body polyhedron(PlanBody.Hull hull) {
    double[] vertices = new double[hull.corners().length * 3];
    for (int i = 0; i < hull.corners().length; i++) {
      place(hull.corners()[i], vertices, i * 3);
    }
    // The frame is left-handed: what ran counter-clockwise runs clockwise.
    List<int[]> mirrored = new ArrayList<>();
    for (int[] face : hull.faces()) {
      int[] turned = new int[face.length];
      for (int i = 0; i < face.length; i++) {
        turned[i] = face[face.length - 1 - i];
      }
      mirrored.add(turned);
    }
    return new ConvexBody(vertices, mirrored);
  }

  private Body crown(PlanBody.Egg egg) {
    double[] centre = new double[3];
    place(new double[] {egg.x(), egg.y(), (egg.bottomM() + egg.topM()) / 2}, centre, 0);
    double[] zenith = new double[3];
    place(new double[] {0, 0, 1}, zenith, 0);
    return new CrownBody(centre, zenith, egg.radiusM(), (egg.topM() - egg.bottomM()) / 2);
  }

  private void place(double[] corner, double[] into, int at) {
    into[at] = frame.x(corner[0], corner[1], corner[2]);
    into[at + 1] = frame.y(corner[0], corner[1], corner[2]);
    into[at + 2] = frame.z(corner[0], corner[1], corner[2]);
  }
}
