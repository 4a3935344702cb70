package yardloom.water.pipe.formula;

import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/**
 * Water as hydraulics needs it: viscosity, and pressure as height of water.
 *
 * <p>Pressure at the density of 15 °C: a foot of water is 0.433 psi.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020 (viscosity, and
 * 0.4333 psi for a foot of water).
 */
public final class Water {
  /** At 20 °C, as the EPANET engine has it (1.1 × 10⁻⁵ ft²/s), square metres per second. */
  public static final double VISCOSITY_M2S = 1.1e-5 * 0.3048 * 0.3048;

  /** At 15 °C, kilograms per cubic metre. */
  public static final double DENSITY = 999.1;

  private Water() {}

  /** The height of water that exerts this pressure. */
  public static Length head(Pressure pressure) {
    return Length.metres(pressure.pascals() / (DENSITY * DarcyWeisbach.GRAVITY));
  }

  public static Pressure pressure(Length head) {
    return pressure(head, DENSITY);
  }

  /**
   * What a height of water exerts at another density, such as that by which another program
   * reports.
   *
   * @param density kilograms per cubic metre
   */
  static Pressure pressure(Length head, double density) {
    return Pressure.pascals(head.metres() * density * DarcyWeisbach.GRAVITY);
  }
}
