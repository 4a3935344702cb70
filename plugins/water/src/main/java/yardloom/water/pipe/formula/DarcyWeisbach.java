package yardloom.water.pipe.formula;

/**
 * Head loss by Darcy and Weisbach, f v² / (2 g d), with the factor of {@link FrictionFactor}.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, Tables 3.1 and
 * 3.2 (roughness of plastic 0.005 × 10⁻³ ft). The engine rounds gravity to 32.2 ft/s², 0.08 percent
 * above the standard value; who compares with it gives {@link #ENGINE_GRAVITY}.
 *
 * @param roughnessM height of the wall's roughness
 * @param viscosityM2s kinematic viscosity
 * @param gravityMs2 metres per second squared
 */
public record DarcyWeisbach(double roughnessM, double viscosityM2s, double gravityMs2)
    implements Friction {
  /** Standard gravity, metres per second squared. */
  public static final double GRAVITY = 9.80665;

  /** As the EPANET engine rounds it. */
  public static final double ENGINE_GRAVITY = 32.2 * 0.3048;

  /** The wall of plastic pipe. */
  public static final double PLASTIC_M = 0.0015e-3;

  public DarcyWeisbach {
    if (roughnessM < 0 || !(viscosityM2s > 0) || !(gravityMs2 > 0)) {
      throw new IllegalArgumentException(
          "roughness "
              + roughnessM
              + " m, viscosity "
              + viscosityM2s
              + " m²/s, gravity "
              + gravityMs2
              + " m/s²");
    }
  }

  /** At standard gravity. */
  public DarcyWeisbach(double roughnessM, double viscosityM2s) {
    this(roughnessM, viscosityM2s, GRAVITY);
  }

  @Override
  public double gradient(double flowM3s, double diameterM) {
    return in(diameterM).gradient(flowM3s);
  }

  @Override
  public Bore in(double diameterM) {
    FrictionFactor factor = new FrictionFactor(roughnessM / diameterM);
    double speedOfFlow = PipeSpeed.metresPerSecond(1, diameterM);
    double reynoldsOfFlow = speedOfFlow * diameterM / viscosityM2s;
    double lossOfSquare = speedOfFlow * speedOfFlow / (2 * gravityMs2 * diameterM);
    return new Bore() {
      @Override
      public double gradient(double flowM3s) {
        return flowM3s <= 0
            ? 0
            : factor.of(reynoldsOfFlow * flowM3s) * lossOfSquare * flowM3s * flowM3s;
      }

      @Override
      public double power(double flowM3s) {
        return 2 + factor.power(reynoldsOfFlow * flowM3s);
      }
    };
  }
}
