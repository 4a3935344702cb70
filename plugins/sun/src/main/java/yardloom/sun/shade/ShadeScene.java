package yardloom.sun.shade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.facts.Obstacle;
import yardloom.kernel.plan.ElementId;
import yardloom.sun.body.Ground;

/**
 * Everything that can stand between a cell and the sun, ready for many cells. Immutable; may be
 * shared by threads.
 *
 * <p>Solid obstacles and the distant horizon share number 0 and come first; every other obstacle
 * has its own. Obstacles that let the same shares of light pass by month have the same schedule;
 * schedule 0 is solid.
 */
public final class ShadeScene {
  /** No element: nobody's shade is left out. */
  public static final int NOBODY = -1;

  private static final List<Double> SOLID = java.util.Collections.nCopies(12, 0.0);

  private final EquatorialFrame frame;
  private final Ground ground;
  private final List<Standing> bodies = new ArrayList<>();
  private final int[] schedules;
  private final List<ElementId> elements = new ArrayList<>();
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
      add(stretch, ColumnProfile.SOLID, NOBODY);
    }
    Solids solids = new Solids(frame, ground);
    for (Obstacle o : obstacles) {
      if (o.passes().equals(SOLID)) {
        solids.of(o).forEach(b -> add(b, ColumnProfile.SOLID, number(o.of())));
      }
    }
    Map<List<Double>, Integer> known = new LinkedHashMap<>();
    known.put(SOLID, 0);
    schedules = new int[obstacles.size() + 1];
    int others = 0;
    for (Obstacle o : obstacles) {
      if (!o.passes().equals(SOLID)) {
        int who = ++others;
        solids.of(o).forEach(b -> add(b, who, number(o.of())));
        schedules[who] = known.computeIfAbsent(o.passes(), k -> known.size());
      }
    }
    passes =
        known.keySet().stream()
            .map(p -> p.stream().mapToDouble(d -> d).toArray())
            .toArray(double[][]::new);
  }

  /** The number of an element that casts shade, given a new one if it has none. */
  private int number(ElementId id) {
    int found = elements.indexOf(id);
    if (found >= 0) {
      return found;
    }
    elements.add(id);
    return elements.size() - 1;
  }

  /** The number of an element's shade, by which a looker leaves it out; {@link #NOBODY} if none. */
  public int shadeOf(ElementId id) {
    return elements.indexOf(id);
  }

  /** The element of a number; none for {@link #NOBODY}. */
  public Optional<ElementId> elementOf(int shade) {
    return shade == NOBODY ? Optional.empty() : Optional.of(elements.get(shade));
  }

  private void add(Body body, int who, int element) {
    bodies.add(new Standing(body, who, element));
  }

  /** A body, the number it is marked with, and the element it belongs to. */
  private record Standing(Body body, int who, int element) {}

  public EquatorialFrame frame() {
    return frame;
  }

  public Ground ground() {
    return ground;
  }

  public int schedule(int who) {
    return schedules[who];
  }

  int scheduleCount() {
    return passes.length;
  }

  public double pass(int schedule, int month) {
    return passes[schedule][month];
  }

  /**
   * Writes into {@code profile} all that hides the sky from a cell at plan x, y and height.
   *
   * @param without the number of an element whose own shade is left out
   */
  public void mark(double x, double y, double heightM, int without, ColumnProfile profile) {
    double eyeX = frame.x(x, y, heightM);
    double eyeY = frame.y(x, y, heightM);
    double eyeZ = frame.z(x, y, heightM);
    profile.clear();
    for (Standing s : bodies) {
      if (without == NOBODY || s.element() != without) {
        s.body().mark(eyeX, eyeY, eyeZ, profile, s.who());
      }
    }
  }

  /**
   * Whether an element hides any of the columns' open sky from a cell; {@code profile} is left with
   * that element alone.
   */
  public boolean touches(int element, double x, double y, double heightM, ColumnProfile profile) {
    double eyeX = frame.x(x, y, heightM);
    double eyeY = frame.y(x, y, heightM);
    double eyeZ = frame.z(x, y, heightM);
    profile.clear();
    for (Standing s : bodies) {
      if (s.element() == element) {
        s.body().mark(eyeX, eyeY, eyeZ, profile, s.who());
      }
    }
    return profile.hidesAny();
  }
}
