package yardloom.soil.texture.formula;

import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;

/**
 * Texture from two tests that need no laboratory.
 *
 * <p>Jar: shaken soil settles as sand (after a minute), silt (after hours) and clay (after a day or
 * more); layer heights stand for shares. Ribbon: moist soil pressed between thumb and finger breaks
 * at a length that grows with clay; feel tells sand from silt. Both are rough: expect the class or
 * a neighbour. Layers of no height at all are OUT_OF_RANGE.
 *
 * <p>References: [1] S. J. Thien, A flow diagram for teaching texture-by-feel analysis, Journal of
 * Agronomic Education 8, 1979, pp. 54-55, with the ribbon lengths of 1 and 2 in as quoted by
 * Colorado State University Extension. The jar test is common practice.
 */
public final class FieldTexture {
  /** Printed beside ribbon results. */
  public static final Source RIBBON =
      Source.read(
          "A flow diagram for teaching texture-by-feel analysis",
          "S. J. Thien, Journal of Agronomic Education 8",
          1979,
          "pp. 54-55, as quoted by Colorado State University Extension");

  /** Printed beside jar results. */
  public static final Source JAR = Source.commonPractice("jar test, layer heights as shares");

  private static final Length SHORT = Length.inches(1);
  private static final Length LONG = Length.inches(2);

  private FieldTexture() {}

  /** How wet soil feels when rubbed. */
  public enum Feel {
    GRITTY,
    NEITHER,
    SMOOTH
  }

  /**
   * Sand and clay in percent from a jar's layers.
   *
   * @return sand, then clay
   */
  public static double[] jar(Length sand, Length silt, Length clay) {
    double total = sand.plus(silt).plus(clay).metres();
    if (sand.metres() < 0 || silt.metres() < 0 || clay.metres() < 0 || !(total > 0)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "the layers of a jar test need heights of zero or more that are not all zero");
    }
    return new double[] {sand.metres() / total * 100, clay.metres() / total * 100};
  }

  /**
   * The class by feel.
   *
   * @param ball whether moist soil stays together when squeezed
   * @param ribbon the length at which a ribbon breaks; zero if none forms
   */
  public static TextureClass ribbon(boolean ball, Length ribbon, Feel feel) {
    if (!ball) {
      return TextureClass.SAND;
    }
    if (ribbon.metres() <= 0) {
      return TextureClass.LOAMY_SAND;
    }
    if (ribbon.compareTo(SHORT) < 0) {
      return pick(feel, TextureClass.SANDY_LOAM, TextureClass.LOAM, TextureClass.SILT_LOAM);
    }
    if (ribbon.compareTo(LONG) < 0) {
      return pick(
          feel, TextureClass.SANDY_CLAY_LOAM, TextureClass.CLAY_LOAM, TextureClass.SILTY_CLAY_LOAM);
    }
    return pick(feel, TextureClass.SANDY_CLAY, TextureClass.CLAY, TextureClass.SILTY_CLAY);
  }

  private static TextureClass pick(
      Feel feel, TextureClass gritty, TextureClass neither, TextureClass smooth) {
    return switch (feel) {
      case GRITTY -> gritty;
      case NEITHER -> neither;
      case SMOOTH -> smooth;
    };
  }
}
