package yardloom.water.pipe.formula;

/**
 * Head lost in fittings: K v² / (2 g).
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, Table 3.3.
 */
public enum Fitting {
  GLOBE_VALVE_OPEN(10),
  ANGLE_VALVE_OPEN(5),
  SWING_CHECK_OPEN(2.5),
  GATE_VALVE_OPEN(0.2),
  SHORT_ELBOW(0.9),
  MEDIUM_ELBOW(0.8),
  LONG_ELBOW(0.6),
  ELBOW_45(0.4),
  TEE_RUN(0.6),
  TEE_BRANCH(1.8),
  SQUARE_ENTRANCE(0.5),
  EXIT(1.0);

  private final double k;

  Fitting(double k) {
    this.k = k;
  }

  public double k() {
    return k;
  }

  /** Metres of head lost at this speed. */
  public double lossM(double speedMs) {
    return lossM(k, speedMs);
  }

  static double lossM(double k, double speedMs) {
    return lossM(k, speedMs, DarcyWeisbach.GRAVITY);
  }

  static double lossM(double k, double speedMs, double gravityMs2) {
    return k * speedMs * speedMs / (2 * gravityMs2);
  }
}
