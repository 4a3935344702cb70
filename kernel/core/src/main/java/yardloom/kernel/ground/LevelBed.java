package yardloom.kernel.ground;

import yardloom.kernel.geom.HalfPlanes;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Earth to move so that a region lies level.
 *
 * <p>Exact for the triangulated surface: each triangle's part of the region is divided where the
 * ground crosses the level, and over each piece the depth is linear, so that its volume is the area
 * times the depth at the piece's centroid.
 *
 * <p>References: plane geometry: a prism of linear depth holds its area times the depth at its
 * centroid.
 *
 * @param cut ground above the level, in place
 * @param fill ground missing below it, in place
 * @param unknown area of the region outside the measured ground, not counted
 */
public record LevelBed(Volume cut, Volume fill, Area unknown) {

  public static LevelBed of(Surface surface, Shape region, Length level) {
    double cutM3 = 0;
    double fillM3 = 0;
    double knownM2 = 0;
    for (Triangle t : surface.triangles()) {
      if (!t.shape().overlaps(region)) {
        continue;
      }
      Shape piece = t.shape().and(region);
      knownM2 += piece.area().squareMetres();
      Shape above =
          t.lowest().compareTo(level) >= 0
              ? piece
              : t.highest().compareTo(level) <= 0 ? Shape.EMPTY : piece.and(above(t, level));
      cutM3 += volumeM3(t, above, level);
      fillM3 -= volumeM3(t, piece.minus(above), level);
    }
    return new LevelBed(
        Volume.cubicMetres(Math.max(0, cutM3)),
        Volume.cubicMetres(Math.max(0, fillM3)),
        Area.squareMetres(Math.max(0, region.area().squareMetres() - knownM2)));
  }

  /** The mean level of the region's known ground: there cut and fill balance. */
  public static Length balanced(Surface surface, Shape region) {
    double sumM3 = 0;
    double knownM2 = 0;
    for (Triangle t : surface.triangles()) {
      if (t.shape().overlaps(region)) {
        Shape piece = t.shape().and(region);
        sumM3 += volumeM3(t, piece, Length.ZERO);
        knownM2 += piece.area().squareMetres();
      }
    }
    if (knownM2 == 0) {
      throw new yardloom.kernel.problem.PlanException(
          yardloom.kernel.problem.ProblemCode.MISSING_OPTION,
          "no levels are given where the region lies, so it has no mean level");
    }
    return Length.metres(sumM3 / knownM2);
  }

  private static double volumeM3(Triangle t, Shape piece, Length level) {
    double sum = 0;
    for (Shape part : piece.parts()) {
      sum += part.area().squareMetres() * (t.levelAtM(part.centroid()) - level.metres());
    }
    return sum;
  }

  /** The side of the triangle's plane above the level, as far as the triangle reaches. */
  private static Shape above(Triangle t, Length level) {
    Slope slope = t.slope();
    double runM = (t.levelAtM(t.a().at()) - level.metres()) / slope.ratio();
    double downX = StrictMath.sin(slope.downhill().radians());
    double downY = StrictMath.cos(slope.downhill().radians());
    return HalfPlanes.behind(
        t.a().at().moved(Length.metres(downX * runM), Length.metres(downY * runM)),
        slope.downhill(),
        Length.metres(t.shape().perimeter().metres() + Math.abs(runM)));
  }
}
