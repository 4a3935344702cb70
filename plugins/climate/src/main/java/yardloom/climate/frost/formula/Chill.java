package yardloom.climate.frost.formula;

/**
 * Winter chill of one hour for fruit trees.
 *
 * <p>References: [1] University of California, Davis, Fruit and Nut Research: About chilling units
 * (hours below 45 °F; hours between 32 and 45 °F; Utah bins 34, 36, 48, 54, 60, 65 °F). A value on
 * a border of the Utah bins belongs to the colder bin (from memory).
 */
public final class Chill {
  private static final double[] UTAH_TOP_F = {34, 36, 48, 54, 60, 65};
  private static final double[] UTAH_UNITS = {0, 0.5, 1, 0.5, 0, -0.5, -1};

  private Chill() {}

  /** One below 45 °F, else none. */
  public static int belowFortyFive(double fahrenheit) {
    return fahrenheit < 45 ? 1 : 0;
  }

  /** One between 32 and 45 °F, else none. */
  public static int aboveFreezing(double fahrenheit) {
    return fahrenheit > 32 && fahrenheit < 45 ? 1 : 0;
  }

  /** Utah chill units; negative when warmth undoes chill. */
  public static double utah(double fahrenheit) {
    int bin = 0;
    while (bin < UTAH_TOP_F.length && fahrenheit > UTAH_TOP_F[bin]) {
      bin++;
    }
    return UTAH_UNITS[bin];
  }
}
