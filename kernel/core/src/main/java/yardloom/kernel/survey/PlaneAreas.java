package yardloom.kernel.survey;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;

/**
 * Areas as surveyors work them out.
 *
 * <p>References: [1] J. Mahun, Open Access Surveying Library, COGO chapter H (area by coordinates).
 * [2] National Society of Professional Surveyors, definition of double meridian distance: the first
 * is the departure of its course; each further one adds the departure before and its own.
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

  /** Double meridian distances of the courses, in their order. */
  public static List<Length> doubleMeridianDistances(List<Traverse.Step> steps) {
    List<Length> found = new ArrayList<>();
    Length dmd = Length.ZERO;
    Length before = Length.ZERO;
    for (Traverse.Step step : steps) {
      dmd = dmd.plus(before).plus(step.departure());
      found.add(dmd);
      before = step.departure();
    }
    return List.copyOf(found);
  }

  /** ½ |Σ DMDᵢ · Latᵢ|. */
  public static Area byDoubleMeridianDistances(List<Traverse.Step> steps) {
    List<Length> dmds = doubleMeridianDistances(steps);
    double twiceM2 = 0;
    for (int i = 0; i < steps.size(); i++) {
      twiceM2 += dmds.get(i).metres() * steps.get(i).latitude().metres();
    }
    return Area.squareMetres(Math.abs(twiceM2) / 2);
  }

  /** Heron's formula: the area within three tapes. */
  public static Area byThreeSides(Length a, Length b, Length c) {
    double s = (a.metres() + b.metres() + c.metres()) / 2;
    double under = s * (s - a.metres()) * (s - b.metres()) * (s - c.metres());
    if (under < 0) {
      throw new PlanException(
          ProblemCode.CONTRADICTION,
          "sides of " + a + ", " + b + " and " + c + " form no triangle; the longest is too long");
    }
    return Area.squareMetres(Math.sqrt(under));
  }

  /** Trapezoidal rule over ordinates at equal distances along a baseline. */
  public static Area trapezoidal(List<Length> ordinates, Length interval) {
    requireOrdinates(ordinates, interval);
    double sumM = 0;
    for (int i = 0; i < ordinates.size(); i++) {
      boolean end = i == 0 || i == ordinates.size() - 1;
      sumM += ordinates.get(i).metres() * (end ? 0.5 : 1);
    }
    return Area.squareMetres(sumM * interval.metres());
  }

  /**
   * Simpson's rule over an odd number of ordinates at equal distances.
   *
   * @throws PlanException (OUT_OF_RANGE) if their number is even
   */
  public static Area simpson(List<Length> ordinates, Length interval) {
    requireOrdinates(ordinates, interval);
    if (ordinates.size() % 2 == 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "Simpson's rule needs an odd number of offsets, got " + ordinates.size());
    }
    double sumM = 0;
    for (int i = 0; i < ordinates.size(); i++) {
      boolean end = i == 0 || i == ordinates.size() - 1;
      sumM += ordinates.get(i).metres() * (end ? 1 : i % 2 == 1 ? 4 : 2);
    }
    return Area.squareMetres(sumM * interval.metres() / 3);
  }

  private static void requireOrdinates(List<Length> ordinates, Length interval) {
    if (ordinates.size() < 2 || interval.metres() <= 0) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "an area by offsets needs at least two offsets and a positive interval");
    }
  }
}
