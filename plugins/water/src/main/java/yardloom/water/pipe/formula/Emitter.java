package yardloom.water.pipe.formula;

/**
 * The flow of an outlet by head, q = k h^x: x about 0.5 in turbulent ones, 1 in laminar ones, near
 * 0 in those that compensate pressure. Those do so from a least head on; below it they give what a
 * turbulent outlet gives that has the same flow there. No flow without head.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, chapter 3,
 * emitters. That outlets below their range behave as turbulent ones is from memory.
 *
 * @param coefficient cubic metres per second at one metre of head
 * @param exponent 0 to 1; networks ask for one above 0
 * @param leastHeadM the head from which the law holds, 0 for a plain outlet
 */
public record Emitter(double coefficient, double exponent, double leastHeadM) {
  private static final double TURBULENT = 0.5;

  public Emitter {
    if (!(coefficient >= 0) || !(exponent >= 0 && exponent <= 1) || !(leastHeadM >= 0)) {
      throw new IllegalArgumentException(
          "emitter k " + coefficient + ", x " + exponent + ", from " + leastHeadM + " m");
    }
  }

  /** A plain outlet. */
  public Emitter(double coefficient, double exponent) {
    this(coefficient, exponent, 0);
  }

  /** The plain outlet that gives {@code flowM3s} at {@code headM}. */
  public static Emitter rated(double flowM3s, double headM, double exponent) {
    return new Emitter(flowM3s / StrictMath.pow(headM, exponent), exponent);
  }

  /** The same outlet, compensating from a head on only. */
  public Emitter from(double headM) {
    return new Emitter(coefficient, exponent, headM);
  }

  public double flowM3s(double headM) {
    if (headM <= 0) {
      return 0;
    }
    return headM < leastHeadM
        ? leastFlow() * Math.sqrt(headM / leastHeadM)
        : coefficient * power(headM, exponent);
  }

  /** The head at which it gives {@code flowM3s}, which is not negative. */
  double headM(double flowM3s) {
    if (leastHeadM > 0 && flowM3s < leastFlow()) {
      double share = flowM3s / leastFlow();
      return leastHeadM * share * share;
    }
    return power(flowM3s / coefficient, 1 / exponent);
  }

  /** By how much the head grows with the flow, in proportion: the power of the law there. */
  double headPower(double flowM3s) {
    return leastHeadM > 0 && flowM3s < leastFlow() ? 1 / TURBULENT : 1 / exponent;
  }

  private double leastFlow() {
    return coefficient * power(leastHeadM, exponent);
  }

  /** Roots and squares are exact, and quick. */
  private static double power(double base, double exponent) {
    if (exponent == TURBULENT) {
      return Math.sqrt(base);
    }
    return exponent == 2 ? base * base : StrictMath.pow(base, exponent);
  }

  /** The share of head whose loss costs a share of flow. */
  public double headDrop(double flowDrop) {
    return 1 - StrictMath.pow(1 - flowDrop, 1 / exponent);
  }
}
