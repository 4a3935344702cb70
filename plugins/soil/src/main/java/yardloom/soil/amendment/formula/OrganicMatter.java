package yardloom.soil.amendment.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;

/**
 * Compost that raises the organic matter of a soil layer.
 *
 * <p>The organic matter to add is A d ρs ΔOM; a volume of compost brings ρc OMc (1 − Mc) of it.
 * Hence V = A d ρs ΔOM / (ρc OMc (1 − Mc)). Both bulk densities are needed: leaving them out is
 * wrong by a factor of about two. Loss by decay in the years after is not counted. Shares 0 to 1,
 * densities above zero; otherwise OUT_OF_RANGE.
 *
 * <p>References: mass balance, derived here; [1] US Composting Council webinar abstract (need of
 * both bulk densities).
 */
public final class OrganicMatter {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.computed(
          "Organic matter balance with both bulk densities", "US Composting Council", 0, "webinar");

  private OrganicMatter() {}

  /**
   * Compost as delivered.
   *
   * @param kgPerM3 wet bulk density
   * @param organicShare of its dry matter
   * @param moistureShare of its wet mass
   */
  public record Compost(double kgPerM3, double organicShare, double moistureShare) {
    public Compost {
      if (!(kgPerM3 > 0
          && organicShare > 0
          && organicShare <= 1
          && moistureShare >= 0
          && moistureShare < 1)) {
        throw new PlanException(
            ProblemCode.OUT_OF_RANGE,
            "compost needs a bulk density above zero, an organic share of 0 to 1 of its dry matter"
                + " and a moisture below 1");
      }
    }
  }

  public static Volume compostFor(
      Area area, Length depth, double soilKgPerM3, double raiseShare, Compost compost) {
    if (!(soilKgPerM3 > 0 && raiseShare >= 0 && raiseShare <= 0.2)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "organic matter is raised by a share from 0 to 0.2 of the soil's mass, got "
              + raiseShare);
    }
    double wantedKg = area.squareMetres() * depth.metres() * soilKgPerM3 * raiseShare;
    double perM3 = compost.kgPerM3() * (1 - compost.moistureShare()) * compost.organicShare();
    return Volume.cubicMetres(wantedKg / perM3);
  }
}
