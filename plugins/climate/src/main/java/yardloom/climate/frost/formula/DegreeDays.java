package yardloom.climate.frost.formula;

/**
 * Growing degree days of a day, in degrees Fahrenheit; never negative.
 *
 * <p>References: [1] Iowa State University, Agronomy 541, lesson 2b: mean less base; [2] the same,
 * 86/50 method: maximum held at 86 °F, minimum held at 50 °F, then the mean less 50 °F, at most 36.
 */
public final class DegreeDays {
  private static final double COOL_F = 50;
  private static final double HOT_F = 86;

  private DegreeDays() {}

  /** Mean of the day above a base [1]. */
  public static double simple(double maximumF, double minimumF, double baseF) {
    return Math.max(0, (maximumF + minimumF) / 2 - baseF);
  }

  /** The 86/50 method [2]. */
  public static double modified(double maximumF, double minimumF) {
    return (held(maximumF) + held(minimumF)) / 2 - COOL_F;
  }

  private static double held(double fahrenheit) {
    return Math.max(COOL_F, Math.min(HOT_F, fahrenheit));
  }
}
