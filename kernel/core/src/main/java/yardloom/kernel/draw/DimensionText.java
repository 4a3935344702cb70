package yardloom.kernel.draw;

import java.math.BigDecimal;
import java.math.RoundingMode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/**
 * Writes lengths as drawings do: {@code 24'-6½"} to the nearest quarter inch, or {@code 7.47 m} to
 * the nearest centimetre.
 */
public final class DimensionText {
  private static final int QUARTERS_PER_FOOT = 48;
  private static final String[] QUARTERS = {"", "¼", "½", "¾"};

  private DimensionText() {}

  public static String of(Length length, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return BigDecimal.valueOf(length.metres()).setScale(2, RoundingMode.HALF_UP).toPlainString()
          + " m";
    }
    long quarters = Math.round(Math.abs(length.feet()) * QUARTERS_PER_FOOT);
    long feet = quarters / QUARTERS_PER_FOOT;
    long inches = quarters % QUARTERS_PER_FOOT / 4;
    String part = QUARTERS[(int) (quarters % 4)];
    String sign = length.metres() < 0 && quarters > 0 ? "-" : "";
    // Below one inch the fraction stands alone, but not after feet: 8'-0¼".
    String inchText = feet == 0 && inches == 0 && !part.isEmpty() ? part : inches + part;
    return sign + (feet == 0 ? inchText + "\"" : feet + "'-" + inchText + "\"");
  }
}
