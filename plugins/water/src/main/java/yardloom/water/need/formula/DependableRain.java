package yardloom.water.need.formula;

import yardloom.kernel.unit.Length;

/**
 * Dependable rain of a month: 0.6 P − 10 mm up to 75 mm, 0.8 P − 25 mm above; at least nothing.
 *
 * <p>Publications give the break at 70 or 75 mm and the last constant as 24 or 25; this is the
 * continuous pair.
 *
 * <p>References: [1] FAO dependable rainfall, as quoted in the documentation of pyCropWat.
 */
public final class DependableRain {
  private DependableRain() {}

  public static Length effective(Length rain) {
    double p = rain.millimetres();
    return Length.millimetres(Math.max(0, p <= 75 ? 0.6 * p - 10 : 0.8 * p - 25));
  }
}
