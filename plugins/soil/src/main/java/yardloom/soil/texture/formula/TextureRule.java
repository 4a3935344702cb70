package yardloom.soil.texture.formula;

import java.util.ArrayList;
import java.util.List;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;

/**
 * The texture class of a soil from its sand and clay percentages; silt is the rest.
 *
 * <p>The first class whose rule holds, comparisons as published; values are not rounded first. Not
 * the widely copied polygons with half-point corners, which disagree with this rule at 63 of the
 * 5151 whole-percent points. Valid for sand, clay ≥ 0 with a sum ≤ 100; anything else, also not a
 * number, is OUT_OF_RANGE.
 *
 * <p>References: [1] ncss-tech/aqp, R/texture.R, ssc_to_texcl (the rule as coded for the US
 * national soil information system). [2] Soil Science Division Staff, Soil Survey Manual, USDA
 * Handbook 18, chapter 3.
 */
public final class TextureRule {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.read(
          "Texture class rule of the national soil information system",
          "USDA-NRCS, as coded in ncss-tech/aqp",
          0,
          "R/texture.R, ssc_to_texcl");

  private TextureRule() {}

  public static TextureClass classify(double sand, double clay) {
    if (!(sand >= 0 && clay >= 0 && sand + clay <= 100)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "sand and clay are percentages from 0 to 100 with a sum of at most 100, got sand "
              + sand
              + " and clay "
              + clay);
    }
    double silt = 100 - sand - clay;
    TextureClass coarse = coarse(sand, silt, clay);
    return coarse != null ? coarse : fine(sand, silt, clay);
  }

  private static TextureClass coarse(double sand, double silt, double clay) {
    if (silt + 1.5 * clay < 15) {
      return TextureClass.SAND;
    }
    if (silt + 2 * clay < 30) {
      return TextureClass.LOAMY_SAND;
    }
    if (silt >= 80 && clay < 12) {
      return TextureClass.SILT;
    }
    if (silt >= 50 && clay < 27) {
      return TextureClass.SILT_LOAM;
    }
    if (clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52) {
      return TextureClass.LOAM;
    }
    return null;
  }

  private static TextureClass fine(double sand, double silt, double clay) {
    if (clay >= 27 && clay < 40 && sand <= 20) {
      return TextureClass.SILTY_CLAY_LOAM;
    }
    if (clay >= 40 && silt >= 40) {
      return TextureClass.SILTY_CLAY;
    }
    if (clay >= 40 && sand <= 45) {
      return TextureClass.CLAY;
    }
    if (clay >= 27 && clay < 40 && sand > 20 && sand <= 45) {
      return TextureClass.CLAY_LOAM;
    }
    if (clay >= 20 && clay < 35 && silt < 28 && sand > 45) {
      return TextureClass.SANDY_CLAY_LOAM;
    }
    if (clay >= 35 && sand > 45) {
      return TextureClass.SANDY_CLAY;
    }
    return TextureClass.SANDY_LOAM;
  }

  /**
   * Sand and clay percentages in the middle of a class: the mean of its whole-percent points.
   *
   * @return sand, then clay
   */
  public static double[] middle(TextureClass of) {
    List<double[]> points = new ArrayList<>();
    for (int sand = 0; sand <= 100; sand++) {
      for (int clay = 0; sand + clay <= 100; clay++) {
        if (classify(sand, clay) == of) {
          points.add(new double[] {sand, clay});
        }
      }
    }
    return new double[] {
      points.stream().mapToDouble(p -> p[0]).average().orElseThrow(),
      points.stream().mapToDouble(p -> p[1]).average().orElseThrow()
    };
  }
}
