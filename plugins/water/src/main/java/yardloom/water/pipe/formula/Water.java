package yardloom.water.pipe.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.Temperature;

/**
 * Water as hydraulics needs it: viscosity, and pressure as height of water.
 *
 * <p>Viscosity within 1 percent from 10 to 30 °C. Pressure at the density of 15 °C: a foot of water
 * is 0.433 psi.
 *
 * <p>References: [1] J. L. M. Poiseuille's viscosity formula, 1.79 × 10⁻⁶ / (1 + 0.03368 t +
 * 0.00021 t²) m²/s (from memory; checked against the table of the R package hydraulics).
 */
public final class Water {
  /** At 20 °C, as the EPANET engine has it (1.1 × 10⁻⁵ ft²/s), square metres per second. */
  public static final double VISCOSITY_M2S = 1.1e-5 * 0.3048 * 0.3048;

  private static final double DENSITY = 999.1;
  private static final double PASCALS_PER_METRE = DENSITY * DarcyWeisbach.GRAVITY;

  private Water() {}

  /** Square metres per second. */
  public static double viscosityM2s(Temperature water) {
    double t = water.celsius();
    if (t < 0 || t > 50) {
      throw new IllegalArgumentException("water of " + t + " °C");
    }
    return 1.79e-6 / (1 + 0.03368 * t + 0.00021 * t * t);
  }

  /** The height of water that exerts this pressure. */
  public static Length head(Pressure pressure) {
    return Length.metres(pressure.pascals() / PASCALS_PER_METRE);
  }

  public static Pressure pressure(Length head) {
    return Pressure.pascals(head.metres() * PASCALS_PER_METRE);
  }
}
