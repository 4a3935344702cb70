package yardloom.sun.calc;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.facts.Obstacle;

/**
 * Everything that can stand between a cell and the sun, ready for many cells. Immutable; may be
 * shared by threads.
 *
 * <p>Each obstacle keeps its number; number 0 is the distant horizon. Obstacles that let the same
 * shares of light pass by month have the same schedule; schedule 0 is solid.
 */
public final class ShadeScene {
  private static final List<Double> SOLID = java.util.Collections.nCopies(12, 0.0);

  private final EquatorialFrame frame;
  private final Ground ground;
  private final List<Body> bodies = new ArrayList<>();
  private final List<Integer> owners = new ArrayList<>();
  private final int[] schedules;
  private final double[][] passes;

  /**
   * A scene.
   *
   * @param northRad bearing of true north on the plan
   * @param horizon distant horizon as bearing and elevation in radians, in order of bearing; empty
   *     for a level one
   */
  public ShadeScene(
      double latitudeRad,
      double northRad,
      Ground ground,
      List<double[]> horizon,
      List<Obstacle> obstacles) {
    frame = new EquatorialFrame(latitudeRad, northRad);
    this.ground = ground;
    for (Body stretch : Horizons.of(frame, northRad, horizon)) {
      add(stretch, 0);
    }
    Solids solids = new Solids(frame, ground);
    Map<List<Double>, Integer> known = new LinkedHashMap<>();
    known.put(SOLID, 0);
    schedules = new int[obstacles.size() + 1];
    for (int i = 0; i < obstacles.size(); i++) {
      int who = i + 1;
      solids.of(obstacles.get(i)).forEach(b -> add(b, who));
      schedules[who] = known.computeIfAbsent(obstacles.get(i).passes(), k -> known.size());
    }
    passes =
        known.keySet().stream()
            .map(p -> p.stream().mapToDouble(d -> d).toArray())
            .toArray(double[][]::new);
  }

  private void add(Body body, int who) {
    bodies.add(body);
    owners.add(who);
  }

  EquatorialFrame frame() {
    return frame;
  }

  Ground ground() {
    return ground;
  }

  int bodyCount() {
    return bodies.size();
  }

  int schedule(int who) {
    return schedules[who];
  }

  int scheduleCount() {
    return passes.length;
  }

  double pass(int schedule, int month) {
    return passes[schedule][month];
  }

  /** Writes into {@code profile} all that hides the sky from a cell at plan x, y and height. */
  void mark(double x, double y, double heightM, ColumnProfile profile) {
    double eyeX = frame.x(x, y, heightM);
    double eyeY = frame.y(x, y, heightM);
    double eyeZ = frame.z(x, y, heightM);
    profile.clear();
    for (int b = 0; b < bodies.size(); b++) {
      bodies.get(b).mark(eyeX, eyeY, eyeZ, profile, owners.get(b));
    }
  }

  /** Whether obstacle {@code who} hides any of the columns' open sky from a cell. */
  boolean touches(int who, double x, double y, double heightM, ColumnProfile profile) {
    double eyeX = frame.x(x, y, heightM);
    double eyeY = frame.y(x, y, heightM);
    double eyeZ = frame.z(x, y, heightM);
    profile.clear();
    for (int b = 0; b < bodies.size(); b++) {
      if (owners.get(b) == who) {
        bodies.get(b).mark(eyeX, eyeY, eyeZ, profile, who);
      }
    }
    return Arrays.stream(profile.count).anyMatch(n -> n > 0);
  }
}
