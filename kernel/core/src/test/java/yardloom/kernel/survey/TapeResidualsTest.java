package yardloom.kernel.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/**
 * Four tapes of about 100 m across each other, adjusted by hand, in any direction.
 *
 * <p>References: [1] W. Baarda, A testing procedure for use in geodetic networks, 1968: w = v /
 * √(σ² − a N⁻¹ aᵀ) (from memory). Across each other N is diagonal; two tapes of equal σ along one
 * line give a N⁻¹ aᵀ = σ² / 2.
 */
class TapeResidualsTest {
  /** A tape swings by 1/200 of the square of the way: some hundredths of a millimetre in all. */
  private static final double BENT_MM = 0.02;

  private final List<TapeFix.Tape> tapes = new ArrayList<>();

  private void tape(
      String name, double alongM, double acrossM, double turn, double m, double error) {
    double sin = Math.sin(Math.toRadians(turn));
    double cos = Math.cos(Math.toRadians(turn));
    Point from = Point.metres(alongM * cos - acrossM * sin, alongM * sin + acrossM * cos);
    tapes.add(new TapeFix.Tape(name, from, Length.metres(m), Length.metres(error)));
  }

  /**
   * Along the first line 100.03 and {@code ahead}, 20 mm each; across it 100.01 and 100.02, 50 mm
   * each. Half the difference moves the point, half the sum is left: to 100.05, −40 mm and w = −40
   * / (20 / √2) = −2.828; across −15 mm and w = −15 / (50 / √2) = −0.424.
   */
  private TapeFix fix(double turn, double ahead) {
    tape("back", -100, 0, turn, 100.03, 0.02);
    tape("ahead", 100, 0, turn, ahead, 0.02);
    tape("right", 0, -100, turn, 100.01, 0.05);
    tape("left", 0, 100, turn, 100.02, 0.05);
    return TapeFix.of(tapes, Optional.of(Point.metres(0, 0)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 35, 90, 128})
  void residuals_areHalfTheSum_andAreNormalisedByTheirOwnError(double turn) {
    TapeFix fix = fix(turn, 100.05);
    double[] residualsMm = {-40, -40, -15, -15};
    double[] w = {-2.8284, -2.8284, -0.4243, -0.4243};
    for (int i = 0; i < 4; i++) {
      assertEquals(residualsMm[i], fix.residuals().get(i).metres() * 1000, BENT_MM);
      assertEquals(w[i], fix.normalised().get(i).orElseThrow(), 0.001);
    }
    // (2 (40 / 20)² + 2 (15 / 50)²) / 2 = 4.09.
    assertEquals(Math.sqrt(4.09), fix.unitWeight().orElseThrow(), 0.001);
    assertEquals(2, fix.freedom());
    // −10 mm along the line, −5 mm across it.
    double radians = Math.toRadians(turn);
    assertEquals(
        -10 * Math.cos(radians) + 5 * Math.sin(radians), fix.at().x().metres() * 1000, BENT_MM);
    assertEquals(
        -10 * Math.sin(radians) - 5 * Math.cos(radians), fix.at().y().metres() * 1000, BENT_MM);
    assertEquals(Optional.empty(), fix.suspect());
  }

  /** 2.0224 times 20 mm / √2 along the line, 50 mm / √2 across it. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 90})
  void standardErrors_areThoseOfTheirLines(double turn) {
    TapeFix fix = fix(turn, 100.05);
    double x = fix.errorX().orElseThrow().metres() * 1000;
    double y = fix.errorY().orElseThrow().metres() * 1000;
    assertEquals(28.60, turn == 0 ? x : y, 0.01);
    assertEquals(71.50, turn == 0 ? y : x, 0.01);
  }

  /** With 100.07 ahead, −50 mm are left and w = −3.54, above 3: of two alike the first is named. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 35})
  void tapeThatDoesNotFit_isNamed(double turn) {
    TapeFix fix = fix(turn, 100.07);
    assertEquals(3.5355, fix.worst(), 0.001);
    assertEquals("back", fix.suspect().orElseThrow().name());
  }
}
