package yardloom.materials.surface.formula;

import yardloom.kernel.geom.Shape;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * The volume of a layer whose depth falls evenly to nothing over a strip along the edge.
 *
 * <p>The horizontal cut at height z of the strip is the outline shrunk by w·z/d, so the volume is
 * the prismoidal rule over those cuts: d·(A(0) + 4 A(w/2) + A(w))/6. Exact for convex outlines that
 * keep their corners while shrinking (their cut areas are quadratic in z); within a few percent of
 * the strip's own volume otherwise. No taper gives area × depth exactly; a taper wider than the bed
 * gives a ridge.
 *
 * <p>References: [1] G. Vose, Handbook of Railroad Construction, 1857, §108 (prismoidal rule).
 */
public final class TaperedLayer {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read("Handbook of Railroad Construction", "G. Vose", 1857, "§108, prismoidal rule");

  private TaperedLayer() {}

  public static Volume volume(Shape outline, Length depth, Length taper) {
    if (taper.metres() <= 0) {
      return outline.area().deep(depth);
    }
    double cutsM2 =
        outline.area().squareMetres()
            + 4 * outline.shrunk(taper.times(0.5)).area().squareMetres()
            + outline.shrunk(taper).area().squareMetres();
    return Volume.cubicMetres(depth.metres() * cutsM2 / 6);
  }
}
