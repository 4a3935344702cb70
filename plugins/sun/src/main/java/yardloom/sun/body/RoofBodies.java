package yardloom.sun.body;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

/**
 * Roof bodies over an outline of eaves.
 *
 * <p>Over a four-cornered outline: gable (ridge over the middle of the longer side, full length),
 * hip (ridge shorter by half the width at each end, all slopes equal), shed (one slope, high along
 * the side that lies furthest up the plan). Over any other outline the roof is {@link #STEPS} steps
 * of even rise, each step's outline drawn in as the slope goes: the shade of a step lies within one
 * eighth of the rise of the true slope's.
 *
 * <p>References: own construction.
 */
public final class RoofBodies {
  static final int STEPS = 4;

  private final Form form;

  RoofBodies(Form form) {
    this.form = form;
  }

  List<PlanBody> of(Shape eaves, double eavesM, double ridgeM) {
    List<Coordinate[]> parts = ConvexParts.of(eaves);
    if (parts.size() != 1 || parts.get(0).length != 4) {
      return stepped(eaves, eavesM, ridgeM);
    }
    Coordinate[] c = parts.get(0);
    if (form == Form.SHED) {
      return List.of(shed(c, eavesM, ridgeM));
    }
    // Turn the corners so that the first side is a long one.
    if (c[0].distance(c[1]) + c[2].distance(c[3]) < c[1].distance(c[2]) + c[3].distance(c[0])) {
      c = new Coordinate[] {c[1], c[2], c[3], c[0]};
    }
    return List.of(ridged(c, eavesM, ridgeM));
  }

  private PlanBody ridged(Coordinate[] c, double eavesM, double ridgeM) {
    Coordinate west = middle(c[3], c[0]);
    Coordinate east = middle(c[1], c[2]);
    if (form == Form.HIP) {
      double width = (c[3].distance(c[0]) + c[1].distance(c[2])) / 2;
      double share = Math.min(0.5 - 1e-6, width / 2 / west.distance(east));
      Coordinate inWest = between(west, east, share);
      east = between(east, west, share);
      west = inWest;
    }
    double[][] corners = {
      at(c[0], eavesM),
      at(c[1], eavesM),
      at(c[2], eavesM),
      at(c[3], eavesM),
      at(west, ridgeM),
      at(east, ridgeM)
    };
    return new PlanBody.Hull(
        corners,
        List.of(
            new int[] {3, 2, 1, 0},
            new int[] {0, 1, 5, 4},
            new int[] {2, 3, 4, 5},
            new int[] {1, 2, 5},
            new int[] {3, 0, 4}));
  }

  private PlanBody shed(Coordinate[] c, double eavesM, double ridgeM) {
    int high = 0;
    for (int i = 1; i < 4; i++) {
      if (middle(c[i], c[(i + 1) % 4]).y > middle(c[high], c[(high + 1) % 4]).y + 1e-9) {
        high = i;
      }
    }
    Coordinate a = c[high];
    Coordinate b = c[(high + 1) % 4];
    double[][] corners = {
      at(a, eavesM), at(b, eavesM),
      at(c[(high + 2) % 4], eavesM), at(c[(high + 3) % 4], eavesM),
      at(a, ridgeM), at(b, ridgeM)
    };
    return new PlanBody.Hull(
        corners,
        List.of(
            new int[] {3, 2, 1, 0},
            new int[] {0, 1, 5, 4},
            new int[] {2, 3, 4, 5},
            new int[] {1, 2, 5},
            new int[] {3, 0, 4}));
  }

  private List<PlanBody> stepped(Shape eaves, double eavesM, double ridgeM) {
    double inradiusM =
        eaves
            .jts()
            .getBoundary()
            .distance(eaves.jts().getFactory().createPoint(eaves.heart().coordinate()));
    List<PlanBody> bodies = new ArrayList<>();
    for (int i = 0; i < STEPS; i++) {
      Shape outline = eaves.shrunk(Length.metres(inradiusM * (i + 0.5) / STEPS));
      double from = eavesM + (ridgeM - eavesM) * i / STEPS;
      bodies.addAll(PlanBodies.prisms(outline, from, eavesM + (ridgeM - eavesM) * (i + 1) / STEPS));
    }
    return bodies;
  }

  private static double[] at(Coordinate c, double heightM) {
    return new double[] {c.x, c.y, heightM};
  }

  private static Coordinate middle(Coordinate a, Coordinate b) {
    return between(a, b, 0.5);
  }

  private static Coordinate between(Coordinate a, Coordinate b, double share) {
    return new Coordinate(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
  }
}
