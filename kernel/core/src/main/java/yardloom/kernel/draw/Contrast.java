package yardloom.kernel.draw;

/**
 * Contrast ratio of two opaque sRGB colours, 1 to 21.
 *
 * <p>Ratios are compared with a threshold unrounded: 4.499 does not meet 4.5.
 *
 * <p>References: [1] Web Content Accessibility Guidelines 2.2, W3C, 2023, definitions of relative
 * luminance (threshold 0.04045) and contrast ratio.
 */
public final class Contrast {
  private Contrast() {}

  /** The ratio for two colours written {@code #rrggbb}; the same either way round. */
  public static double ratio(String colour, String other) {
    double a = luminance(colour);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance, 0 for black to 1 for white. */
  public static double luminance(String colour) {
    double[] linear = linear(colour);
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
  }

  /** Red, green and blue of {@code #rrggbb} as linear light, each 0 to 1. */
  static double[] linear(String colour) {
    if (!colour.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("\"" + colour + "\" is not a colour #rrggbb");
    }
    double[] linear = new double[3];
    for (int i = 0; i < 3; i++) {
      double encoded = Integer.parseInt(colour.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      linear[i] =
          encoded <= 0.04045 ? encoded / 12.92 : StrictMath.pow((encoded + 0.055) / 1.055, 2.4);
    }
    return linear;
  }
}
