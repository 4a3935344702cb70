package yardloom.water.pipe.formula;

/**
 * The flow of an outlet by head, q = k h^x: x about 0.5 in turbulent ones, 1 in laminar ones, near
 * 0 in those that compensate pressure. No flow without head.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, chapter 3,
 * emitters.
 *
 * @param coefficient cubic metres per second at one metre of head
 * @param exponent 0 to 1
 */
public record Emitter(double coefficient, double exponent) {
  public Emitter {
    if (!(coefficient >= 0) || !(exponent >= 0 && exponent <= 1)) {
      throw new IllegalArgumentException("emitter k " + coefficient + ", x " + exponent);
    }
  }

  /** The outlet that gives {@code flowM3s} at {@code headM}. */
  public static Emitter rated(double flowM3s, double headM, double exponent) {
    return new Emitter(flowM3s / StrictMath.pow(headM, exponent), exponent);
  }

  /** The exponent of an outlet that was measured at two heads or pressures. */
  public static double exponent(double flowA, double headA, double flowB, double headB) {
    return StrictMath.log(flowB / flowA) / StrictMath.log(headB / headA);
  }

  public double flowM3s(double headM) {
    return headM <= 0 ? 0 : coefficient * StrictMath.pow(headM, exponent);
  }

  /** The share of flow that is lost with a share of head. */
  public double flowDrop(double headDrop) {
    return 1 - StrictMath.pow(1 - headDrop, exponent);
  }

  /** The share of head whose loss costs a share of flow; exponent above 0. */
  public double headDrop(double flowDrop) {
    return 1 - StrictMath.pow(1 - flowDrop, 1 / exponent);
  }
}
