package yardloom.kernel.draw;

/**
 * CIEDE2000 colour difference; guards that colours used as codes stay apart.
 *
 * <p>Weights kL = kC = kH = 1. Zero for equal colours, symmetric. A difference above about 20 is
 * seen at a glance.
 *
 * <p>References: [1] G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000 color-difference formula, Color
 * Research and Application 30(1), 2005, pp. 21-30, equations 2-22. [2] IEC 61966-2-1, sRGB
 * primaries and white D65 (from memory).
 */
public final class ColourDifference {
  private static final double TWENTY_FIVE_TO_7 = 6_103_515_625.0;

  private ColourDifference() {}

  /** A colour in CIE L*a*b*. */
  public record Lab(double lightness, double a, double b) {}

  /** The difference of two colours written {@code #rrggbb}. */
  public static double between(String colour, String other) {
    return between(lab(colour), lab(other));
  }

  /** The L*a*b* coordinates of an sRGB colour under D65. */
  public static Lab lab(String colour) {
    double[] c = Contrast.linear(colour);
    double x = 0.4124564 * c[0] + 0.3575761 * c[1] + 0.1804375 * c[2];
    double y = 0.2126729 * c[0] + 0.7151522 * c[1] + 0.0721750 * c[2];
    double z = 0.0193339 * c[0] + 0.1191920 * c[1] + 0.9503041 * c[2];
    double fx = curve(x / 0.95047);
    double fy = curve(y);
    double fz = curve(z / 1.08883);
    return new Lab(116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz));
  }

  private static double curve(double t) {
    double limit = 216.0 / 24389;
    return t > limit ? StrictMath.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
  }

  /** The difference of two colours. */
  public static double between(Lab one, Lab two) {
    double meanChroma = (StrictMath.hypot(one.a, one.b) + StrictMath.hypot(two.a, two.b)) / 2;
    double g = (1 - seventhRoot(meanChroma)) / 2;
    double a1 = one.a * (1 + g);
    double a2 = two.a * (1 + g);
    double c1 = StrictMath.hypot(a1, one.b);
    double c2 = StrictMath.hypot(a2, two.b);
    double h1 = hueDegrees(a1, one.b);
    double h2 = hueDegrees(a2, two.b);
    boolean grey = c1 * c2 == 0;
    double turn = grey ? 0 : wrapped(h2 - h1);
    double deltaL = two.lightness - one.lightness;
    double deltaC = c2 - c1;
    double deltaH = 2 * StrictMath.sqrt(c1 * c2) * sin(turn / 2);
    double meanL = (one.lightness + two.lightness) / 2;
    double meanC = (c1 + c2) / 2;
    double meanH = grey ? h1 + h2 : meanHue(h1, h2);
    double fromMiddle = (meanL - 50) * (meanL - 50);
    double weightL = 1 + 0.015 * fromMiddle / StrictMath.sqrt(20 + fromMiddle);
    double weightC = 1 + 0.045 * meanC;
    double weightH = 1 + 0.015 * meanC * hueWeight(meanH);
    double spread = 30 * StrictMath.exp(-square((meanH - 275) / 25));
    double rotation = -sin(2 * spread) * 2 * seventhRoot(meanC);
    double l = deltaL / weightL;
    double c = deltaC / weightC;
    double h = deltaH / weightH;
    return StrictMath.sqrt(Math.max(0, l * l + c * c + h * h + rotation * c * h));
  }

  private static double hueWeight(double meanH) {
    return 1
        - 0.17 * cos(meanH - 30)
        + 0.24 * cos(2 * meanH)
        + 0.32 * cos(3 * meanH + 6)
        - 0.20 * cos(4 * meanH - 63);
  }

  private static double seventhRoot(double chroma) {
    double power = StrictMath.pow(chroma, 7);
    return StrictMath.sqrt(power / (power + TWENTY_FIVE_TO_7));
  }

  private static double hueDegrees(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double degrees = StrictMath.toDegrees(StrictMath.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double wrapped(double turn) {
    return turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
  }

  private static double meanHue(double h1, double h2) {
    if (Math.abs(h1 - h2) <= 180) {
      return (h1 + h2) / 2;
    }
    return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
  }

  private static double square(double x) {
    return x * x;
  }

  private static double sin(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }

  private static double cos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }
}
