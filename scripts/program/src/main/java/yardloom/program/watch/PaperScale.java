package yardloom.program.watch;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads scales as title blocks write them. */
final class PaperScale {
  private static final Pattern RATIO = Pattern.compile("1:([0-9]+)");
  private static final Pattern FEET = Pattern.compile("(?:([0-9]+)/)?([0-9]+)\" = ([0-9]+)'");
  private static final double MM_PER_INCH = 25.4;
  private static final double M_PER_FOOT = 0.3048;

  private PaperScale() {}

  /**
   * Paper millimetres for a metre on the ground, from {@code 1:100}, {@code 1" = 10'} or {@code
   * 1/8" = 1'}; 0 for a sheet without a scale.
   */
  static double millimetresPerMetre(String scale) {
    Matcher ratio = RATIO.matcher(scale);
    if (ratio.find()) {
      return 1000 / Double.parseDouble(ratio.group(1));
    }
    Matcher feet = FEET.matcher(scale);
    if (feet.find()) {
      double second = Double.parseDouble(feet.group(2));
      double inches = feet.group(1) == null ? second : Double.parseDouble(feet.group(1)) / second;
      return inches * MM_PER_INCH / (Double.parseDouble(feet.group(3)) * M_PER_FOOT);
    }
    return 0;
  }
}
