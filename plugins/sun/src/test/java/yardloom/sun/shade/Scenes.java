package yardloom.sun.shade;

import java.util.Collections;
import java.util.List;
import yardloom.facts.Obstacle;
import yardloom.facts.Obstacle.Form;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.ElementKind;
import yardloom.kernel.unit.Length;
import yardloom.sun.body.Ground;
import yardloom.sun.hours.DayLight;
import yardloom.sun.hours.DayTally;

/** Small scenes and single days for tests. */
public final class Scenes {
  static final List<Double> SOLID = Collections.nCopies(12, 0.0);

  private Scenes() {}

  public static Obstacle box(double x0, double y0, double x1, double y1, double heightM) {
    return solid(Form.PRISM, rectangle(x0, y0, x1, y1), 0, heightM);
  }

  public static Shape rectangle(double x0, double y0, double x1, double y1) {
    return Shape.rectangle(Point.metres(x0, y0), Length.metres(x1 - x0), Length.metres(y1 - y0));
  }

  public static Obstacle solid(Form form, Shape footprint, double baseM, double topM) {
    return passing(form, footprint, baseM, topM, 0);
  }

  static Obstacle passing(Form form, Shape footprint, double baseM, double topM, double share) {
    return new Obstacle(
        new ElementId(ElementKind.STRUCTURE, "it"),
        form,
        footprint,
        Length.metres(baseM),
        Length.metres(topM),
        Collections.nCopies(12, share));
  }

  public static ShadeScene scene(double latitudeDeg, Obstacle... obstacles) {
    return new ShadeScene(
        Math.toRadians(latitudeDeg), 0, Ground.LEVEL, List.of(), List.of(obstacles));
  }

  /** The course of a day of one declination at a place on the ground. */
  public static DayLight day(
      ShadeScene scene, double declinationDeg, int columnsPerDay, double x, double y) {
    HourColumns columns =
        new HourColumns(scene.frame(), scene.ground(), columnsPerDay, Math.tan(0.42));
    ColumnProfile profile = new ColumnProfile(columns);
    scene.mark(x, y, scene.ground().heightM(x, y), ShadeScene.NOBODY, profile);
    double tan = Math.tan(Math.toRadians(declinationDeg));
    return new DayTally(scene, columns, new double[] {tan}, new int[] {5}).of(profile, 0);
  }
}
