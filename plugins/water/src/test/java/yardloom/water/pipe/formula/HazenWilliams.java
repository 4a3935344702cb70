package yardloom.water.pipe.formula;

/**
 * Head loss by Hazen and Williams: 4.727 q^1.852 / (C^1.852 d^4.871) in feet and cubic feet a
 * second, which is 10.667 in metres.
 *
 * <p>For water of ordinary temperature in pipes of about 2 inches and more. In dripline it gives
 * too little: 11 percent at 200 L/h in 14.5 mm with C = 140; use {@link DarcyWeisbach} there. Other
 * printed forms of the law differ by up to 1.6 percent.
 *
 * <p>References: [1] L. Rossman and others, EPANET 2.2 User Manual, US EPA, 2020, Table 3.1; Table
 * 3.2 gives C = 140 to 150 for plastic.
 *
 * @param c roughness coefficient, higher is smoother
 */
public record HazenWilliams(double c) implements Friction {
  /** New plastic pipe. */
  public static final double PLASTIC = 140;

  private static final double EXPONENT = 1.852;
  private static final double FOOT = 0.3048;
  private static final double FEET_FORM = 4.727;

  public HazenWilliams {
    if (!(c > 0)) {
      throw new IllegalArgumentException("Hazen-Williams C " + c);
    }
  }

  @Override
  public double gradient(double flowM3s, double diameterM) {
    double cubicFeet = flowM3s / (FOOT * FOOT * FOOT);
    return FEET_FORM
        * StrictMath.pow(cubicFeet / c, EXPONENT)
        / StrictMath.pow(diameterM / FOOT, 4.871);
  }
}
