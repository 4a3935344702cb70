package yardloom.water.pipe.formula;

/**
 * Head loss in smooth small tube: laminar to Re 2000, Blasius above, the usual law of drip
 * handbooks.
 *
 * <p>The step at Re 2000 is that of the handbook; {@link DarcyWeisbach} passes it smoothly.
 *
 * <p>References: [1] H. Blasius, 1913. [2] J. Keller and R. Bliesner, Sprinkle and Trickle
 * Irrigation, 1990 (combined constants, from memory).
 *
 * @param viscosityM2s kinematic viscosity
 */
public record SmoothTube(double viscosityM2s) implements Friction {
  @Override
  public double gradient(double flowM3s, double diameterM) {
    if (flowM3s <= 0) {
      return 0;
    }
    double speed = PipeSpeed.metresPerSecond(flowM3s, diameterM);
    double reynolds = speed * diameterM / viscosityM2s;
    double factor = reynolds <= 2000 ? 64 / reynolds : 0.3164 * StrictMath.pow(reynolds, -0.25);
    return factor * speed * speed / (2 * DarcyWeisbach.GRAVITY * diameterM);
  }
}
