package yardloom.sun.light.formula;

/**
 * Direct and diffuse solar radiation on level ground under a clear sky, in MJ per square metre.
 *
 * <p>Both parts follow ASCE-EWRI's clear-sky index for clean air: K_B = 0.98 exp(-0.00146 P / sin β
 * - 0.075 (W / sin β)^0.4) and K_D = 0.35 - 0.36 K_B for K_B ≥ 0.15, else 0.18 + 0.82 K_B. P is the
 * pressure in kPa: the first term is the mass of air that scatters the beam; W is the water in the
 * column in mm: the second is what vapour takes. Dividing by sin β lengthens the way through both.
 * The more the beam loses, the more the sky gives back, up to a point. sin β is held at 0.01 or
 * above, below which nothing counts. How strong the sun is above the air, pressure and water come
 * with the fact of radiation.
 *
 * <p>References: [1] The ASCE Standardized Reference Evapotranspiration Equation, ASCE-EWRI, 2005,
 * eq. D.1, D.2, D.4 and D.5 (through published program outputs).
 *
 * @param normalMjPerHour above the air on a surface square to the sun, MJ per square metre and hour
 * @param pressureKpa pressure at the ground
 * @param waterMm water in the column of air
 */
public record ClearSkyHour(double normalMjPerHour, double pressureKpa, double waterMm) {
  private static final double LOWEST_SINE = 0.01;

  /** Direct and diffuse radiation on level ground in an hour with the sun at one height. */
  public record Hour(double beam, double diffuse) {}

  /**
   * One hour.
   *
   * @param sine of the sun's elevation
   */
  public Hour hour(double sine) {
    if (sine < LOWEST_SINE) {
      return new Hour(0, 0);
    }
    double above = normalMjPerHour * sine;
    double kb =
        0.98
            * StrictMath.exp(
                -0.00146 * pressureKpa / sine - 0.075 * StrictMath.pow(waterMm / sine, 0.4));
    double kd = kb >= 0.15 ? 0.35 - 0.36 * kb : 0.18 + 0.82 * kb;
    return new Hour(kb * above, kd * above);
  }
}
