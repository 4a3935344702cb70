package yardloom.water.pipe.formula;

/**
 * Head loss by Darcy and Weisbach, f v² / (2 g d), with the factor of {@link FrictionFactor#of}.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, Tables 3.1 and
 * 3.2 (roughness of plastic 0.005 × 10⁻³ ft). The engine rounds standard gravity to 32.2 ft/s²,
 * 0.08 percent above what is used here.
 *
 * @param roughnessM height of the wall's roughness
 * @param viscosityM2s kinematic viscosity
 */
public record DarcyWeisbach(double roughnessM, double viscosityM2s) implements Friction {
  /** Standard gravity, metres per second squared. */
  public static final double GRAVITY = 9.80665;

  /** The wall of plastic pipe. */
  public static final double PLASTIC_M = 0.0015e-3;

  public DarcyWeisbach {
    if (roughnessM < 0 || !(viscosityM2s > 0)) {
      throw new IllegalArgumentException(
          "roughness " + roughnessM + " m, viscosity " + viscosityM2s + " m²/s");
    }
  }

  @Override
  public double gradient(double flowM3s, double diameterM) {
    if (flowM3s <= 0) {
      return 0;
    }
    double speed = PipeSpeed.metresPerSecond(flowM3s, diameterM);
    double reynolds = speed * diameterM / viscosityM2s;
    return gradient(FrictionFactor.of(reynolds, roughnessM / diameterM), speed, diameterM);
  }

  /** The loss for a factor that is known otherwise. */
  public static double gradient(double factor, double speedMs, double diameterM) {
    return factor * speedMs * speedMs / (2 * GRAVITY * diameterM);
  }
}
