package yardloom.sun.light.formula;

/**
 * Daily light integral: photosynthetic light per square metre and day, in mol.
 *
 * <p>Under shade the direct part counts by the time and share in which it arrives, the diffuse part
 * by the sky view.
 *
 * <p>References: [1] J. E. Faust, J. Logan, Daily Light Integral: A Research Review and
 * High-resolution Maps of the United States, HortScience 53, 2018, pp. 1250-1257, abstract:
 * 0.007265 mol/Wh (45 % of global radiation, 4.48 µmol/J).
 */
public final class DailyLight {
  /** Mol of photons per kWh of global radiation [1]. */
  public static final double MOL_PER_KWH = 7.265;

  /** Megajoules in a kilowatt-hour. */
  public static final double MJ_PER_KWH = 3.6;

  private DailyLight() {}

  /** From global radiation. */
  public static double ofKwh(double kwhPerSquareMetre) {
    return kwhPerSquareMetre * MOL_PER_KWH;
  }

  /** From global radiation. */
  public static double ofMegajoules(double megajoulesPerSquareMetre) {
    return ofKwh(megajoulesPerSquareMetre / MJ_PER_KWH);
  }

  /** Under shade: what arrives of the direct part, and the sky's part by the share of sky seen. */
  public static double shaded(double beamMegajoules, double diffuseMegajoules, double skyView) {
    return ofMegajoules(beamMegajoules + diffuseMegajoules * skyView);
  }
}
