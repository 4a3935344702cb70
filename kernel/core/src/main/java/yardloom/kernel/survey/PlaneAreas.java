package yardloom.kernel.survey;

import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Area;

/**
 * Areas as surveyors work them out.
 *
 * <p>References: [1] J. Mahun, Open Access Surveying Library, COGO chapter H (area by coordinates).
 */
public final class PlaneAreas {
  private PlaneAreas() {}

  /** ½ |Σ (Eᵢ Nᵢ₊₁ − Eᵢ₊₁ Nᵢ)|, independent of direction and first corner. */
  public static Area byCoordinates(List<Point> corners) {
    return Area.squareMetres(Math.abs(signedM2(corners)));
  }

  /** The same, positive when the corners run counter-clockwise. */
  static double signedM2(List<Point> corners) {
    if (corners.isEmpty()) {
      return 0;
    }
    // Near the first corner, so that far origins cost no digits.
    double x0 = corners.get(0).x().metres();
    double y0 = corners.get(0).y().metres();
    double twiceM2 = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      twiceM2 +=
          (a.x().metres() - x0) * (b.y().metres() - y0)
              - (b.x().metres() - x0) * (a.y().metres() - y0);
    }
    return twiceM2 / 2;
  }
}
