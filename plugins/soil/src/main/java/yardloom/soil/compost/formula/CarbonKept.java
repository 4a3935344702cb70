package yardloom.soil.compost.formula;

import java.util.List;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Mass;
import yardloom.soil.compost.formula.CompostMix.Feed;
import yardloom.soil.texture.formula.Range;

/**
 * Carbon of composted or mulched plant matter that is still in the soil after ten years.
 *
 * <p>Carbon = wet mass × dry share × carbon share; of that a twentieth to three tenths. The range
 * is wide because it depends on climate, soil and material; a single figure would be a claim that
 * nobody can make. No material keeps nothing.
 *
 * <p>References: none found that fits gardens; the range is from memory and printed so.
 */
public final class CarbonKept {
  /** Share of carbon that remains after ten years. */
  public static final Range SHARE =
      new Range(
          0.05,
          0.3,
          Source.memory(
              "A twentieth to three tenths of the carbon remain after ten years",
              "recalled from long-term amendment trials",
              0,
              ""));

  private CarbonKept() {}

  /** All carbon in the mix. */
  public static Mass carbon(List<Feed> mix) {
    double kg = 0;
    for (Feed f : mix) {
      kg += f.wet().kilograms() * (1 - f.moisture() / 100) * f.carbon() / 100;
    }
    return Mass.kilograms(kg);
  }
}
