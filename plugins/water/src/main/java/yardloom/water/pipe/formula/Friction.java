package yardloom.water.pipe.formula;

/**
 * A law of head loss in straight pipe.
 *
 * <p>References: {@link DarcyWeisbach}; tests bring the laws of Hazen and Williams and of Blasius.
 */
public interface Friction {
  /**
   * Metres of head lost in one metre of pipe.
   *
   * @param flowM3s not negative
   * @param diameterM inside diameter, above 0
   */
  double gradient(double flowM3s, double diameterM);

  /** The same law for one bore, which may keep what depends on the bore alone. */
  default Bore in(double diameterM) {
    return new Bore() {
      @Override
      public double gradient(double flowM3s) {
        return Friction.this.gradient(flowM3s, diameterM);
      }

      @Override
      public double power(double flowM3s) {
        double rise = gradient(1.0001 * flowM3s) - gradient(0.9999 * flowM3s);
        return rise / (0.0002 * gradient(flowM3s));
      }
    };
  }

  /** The loss in pipe of one inside diameter. */
  interface Bore {
    /** Metres of head lost in one metre of pipe; the flow is not negative. */
    double gradient(double flowM3s);

    /**
     * By how much the loss grows with the flow, in proportion: 1 in laminar flow, near 2 in rough
     * pipes. Newton's method asks for it, to be quick.
     */
    double power(double flowM3s);
  }
}
