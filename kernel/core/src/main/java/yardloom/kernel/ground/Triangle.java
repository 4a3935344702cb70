package yardloom.kernel.ground;

import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

/**
 * One plane piece of a surface: z = z₀ + gx (x − x₀) + gy (y − y₀).
 *
 * <p>References: [1] XMS wiki, Linear interpolation (plane through three points).
 */
record Triangle(Spot a, Spot b, Spot c) {

  private double gradient(boolean alongX) {
    double abx = b.at().x().minus(a.at().x()).metres();
    double aby = b.at().y().minus(a.at().y()).metres();
    double acx = c.at().x().minus(a.at().x()).metres();
    double acy = c.at().y().minus(a.at().y()).metres();
    double abz = b.level().minus(a.level()).metres();
    double acz = c.level().minus(a.level()).metres();
    double det = abx * acy - acx * aby;
    return alongX ? (abz * acy - acz * aby) / det : (acz * abx - abz * acx) / det;
  }

  double levelAtM(Point p) {
    return a.level().metres()
        + gradient(true) * p.x().minus(a.at().x()).metres()
        + gradient(false) * p.y().minus(a.at().y()).metres();
  }

  Slope slope() {
    double gx = gradient(true);
    double gy = gradient(false);
    double downhill = Math.toDegrees(StrictMath.atan2(-gx, -gy));
    return new Slope(Math.hypot(gx, gy), Angle.degrees(downhill < 0 ? downhill + 360 : downhill));
  }

  Length lowest() {
    return a.level().min(b.level()).min(c.level());
  }

  Length highest() {
    return a.level().max(b.level()).max(c.level());
  }

  Shape shape() {
    return Shape.polygon(java.util.List.of(a.at(), b.at(), c.at()));
  }
}
