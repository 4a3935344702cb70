package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

class FrictionTest {
  private static final OutsideRows HAZEN_WILLIAMS =
      OutsideRows.of(FrictionTest.class, "hazen-williams.csv");
  private static final OutsideRows SPEEDS = OutsideRows.of(FrictionTest.class, "speeds.csv");
  private static final OutsideRows SMALL_TUBES =
      OutsideRows.of(FrictionTest.class, "small-tubes.csv");
  private static final OutsideRows TRANSITION =
      OutsideRows.of(FrictionTest.class, "transition.csv");

  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  private static double gpm(double value) {
    return Flow.gallonsPerMinute(value).cubicMetresPerSecond();
  }

  private static double lph(double value) {
    return Flow.litresPerHour(value).cubicMetresPerSecond();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "hazen-williams.csv", numLinesToSkip = 1)
  void hazenWilliams_ofPublishedPipes(
      String id, double flowGpm, double inches, double c, double expected, double tolerance) {
    double found = new HazenWilliams(c).gradient(gpm(flowGpm), inches * INCH) * 1000;
    HAZEN_WILLIAMS.check(id, expected, found, tolerance);
  }

  /** HF-01, HF-04: another printed form gives 9.007 ft in 100 ft; forms differ by 1.6 percent. */
  @Test
  void hazenWilliams_inMetres_hasTheKnownConstant_andOtherFormsDifferLittle() {
    double q = 0.001;
    double d = 0.05;
    double constant =
        new HazenWilliams(140).gradient(q, d)
            * Math.pow(140, 1.852)
            * Math.pow(d, 4.871)
            / Math.pow(q, 1.852);
    assertEquals(10.6668, constant, 0.001);
    double other =
        0.2083 * Math.pow(100 / 140.0, 1.852) * Math.pow(200, 1.852) / Math.pow(3.048, 4.8655);
    assertEquals(9.0, other, 0.01);
    double ours = new HazenWilliams(140).gradient(gpm(200), 3.048 * INCH) * 100;
    assertEquals(other, ours, other * 0.016);
  }

  /** A page prints 250^1.852 as 41,842; the power is 27,605. */
  @Test
  void power_ofAMisprintedTable_isNotOurs() {
    double ratio =
        new HazenWilliams(140).gradient(gpm(250), 0.1)
            / new HazenWilliams(140).gradient(gpm(1), 0.1);
    assertEquals(27_605, ratio, 1);
    assertNotEquals(41_842, ratio, 100);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "speeds.csv", numLinesToSkip = 1)
  void speed_ofPublishedPipes(
      String id, double flowGpm, double inches, double expected, double tolerance) {
    double found = PipeSpeed.metresPerSecond(gpm(flowGpm), inches * INCH) / FOOT;
    SPEEDS.check(id, expected, found, tolerance);
    double back = PipeSpeed.flowM3s(found * FOOT, inches * INCH);
    assertEquals(flowGpm, Flow.cubicMetresPerSecond(back).gallonsPerMinute(), 1e-6);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "small-tubes.csv", numLinesToSkip = 1)
  void smallTubes_byEachLaw(
      String id, String law, double flowLph, double mm, double viscosity, double expected) {
    Friction friction =
        switch (law) {
          case "smooth" -> new SmoothTube(viscosity);
          case "hw140" -> new HazenWilliams(140);
          default -> new HazenWilliams(150);
        };
    double found = friction.gradient(lph(flowLph), mm / 1000) * 100;
    SMALL_TUBES.check(id, expected, found, expected * 1e-3);
  }

  /** HF-16, HF-17: combined constants of drip handbooks (7.89e7 and 0.133 from memory). */
  @Test
  void blasius_asOneConstant_isThatOfTheHandbook() {
    double nu = 1.004e-6;
    double factor = 0.32 / 0.3164;
    double metric =
        new SmoothTube(nu).gradient(0.0002, 0.0145)
            * factor
            * 100
            * Math.pow(14.5, 4.75)
            / Math.pow(0.2, 1.75);
    assertEquals(7.88e7, metric, 7.88e7 * 0.005);
    double us =
        new SmoothTube(nu).gradient(gpm(3), 0.6 * INCH)
            * factor
            * 100
            * Math.pow(0.6, 4.75)
            / Math.pow(3, 1.75);
    assertEquals(0.1329, us, 0.1329 * 0.005);
  }

  /** Trap 7: the engine's sign in the cubic, not the manual's; engine gravity is 32.2 ft/s². */
  @ParameterizedTest
  @CsvFileSource(resources = "transition.csv", numLinesToSkip = 1)
  void darcy_throughAllRegimes_isThatOfTheEngine(String id, double litresPerMinute, double lossM) {
    double ours =
        new DarcyWeisbach(
                    DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S, DarcyWeisbach.ENGINE_GRAVITY)
                .gradient(litresPerMinute / 60_000, 0.0145)
            * 10;
    TRANSITION.check(id, lossM, ours, 3e-5);
  }

  /** HF-19, HF-20, HF-21: doctest outputs of the Python library fluids, read. */
  @Test
  void factors_areThoseOfTheFluidsLibrary() {
    assertEquals(0.5, new FrictionFactor(0).of(128), 0);
    assertEquals(0.0184524244, new FrictionFactor(1e-4).of(1e5), 1e-7);
    // Colebrook's own law gives 0.018513866 there; Swamee and Jain say they keep within 3 percent.
    assertEquals(0.018513866, new FrictionFactor(1e-4).of(1e5), 0.018513866 * 0.03);
  }

  /** HF-22, Crane TP-410M example 7.1 via fluids: f .0179 in the book. */
  @Test
  void plasticPipe_ofCraneExample() {
    double re = PipeSpeed.metresPerSecond(0.2 / 60, 0.05) * 0.05 / 0.801e-6;
    assertEquals(100_600, re, 100_600 * 0.06);
    assertEquals(0.0179, new FrictionFactor(0).of(re), 0.0006);
  }

  /**
   * HF-23, HF-24: printed outputs of the R package hydraulics, read: 4 ft³/s in 20 in over 10,560
   * ft loses 5.72 ft, 1 ft³/s over 3,884 ft 0.160 ft. It solves Colebrook; within 3 percent.
   */
  @Test
  void longPipes_ofTheHydraulicsPackage() {
    double d = 20 * INCH;
    double cubicFoot = FOOT * FOOT * FOOT;
    double quick =
        new DarcyWeisbach(0.0005 * FOOT, 1.229e-5 * FOOT * FOOT).gradient(4 * cubicFoot, d);
    assertEquals(5.72, quick * 10_560, 5.72 * 0.03);
    double slow = new DarcyWeisbach(0.0005 * FOOT, 1.23e-5 * FOOT * FOOT).gradient(cubicFoot, d);
    assertEquals(0.160, slow * 3884, 0.160 * 0.03);
  }

  @Property(seed = "20261127")
  void power_isTheSlopeOfTheLoss(@ForAll @DoubleRange(min = 100, max = 50_000) double reynolds) {
    DarcyWeisbach law = new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S);
    double d = 0.0145;
    double q = PipeSpeed.flowM3s(reynolds * Water.VISCOSITY_M2S / d, d);
    double rise = law.gradient(q * 1.00001, d) - law.gradient(q * 0.99999, d);
    // Regimes meet at 2000 and 4000, where the difference lies on both sides.
    boolean isEnd = Math.abs(reynolds - 2000) < 1 || Math.abs(reynolds - 4000) < 1;
    double allowed = isEnd ? 0.6 : 1e-3;
    assertEquals(rise / (0.00002 * law.gradient(q, d)), law.in(d).power(q), allowed);
  }

  /** HF-27, HF-28: EPANET 2.2 manual Table 3.3. */
  @Test
  void fittings_haveTheTabledCoefficients() {
    double loss = Fitting.lossM(Fitting.SHORT_ELBOW.k(), 1.5, DarcyWeisbach.GRAVITY);
    assertEquals(0.1032, loss, 0.1032 * 1e-3);
    assertEquals(0.6, Fitting.TEE_RUN.k());
    assertEquals(1.8, Fitting.TEE_BRANCH.k());
  }

  /** U-03, U-04, U-05, U-10: constants of the EPANET engine. */
  @Test
  void water_hasTheEnginesConstants() {
    double psiPerFoot = Water.pressure(Length.feet(1)).psi();
    assertEquals(0.433, psiPerFoot, 5e-4);
    assertEquals(43.33, Water.pressure(Length.feet(100)).psi(), 0.05);
    assertEquals(1.0219e-6, Water.VISCOSITY_M2S, 1.1e-9);
    assertEquals(100, Water.head(Pressure.psi(43.33)).feet(), 0.1);
    assertEquals(43.33, Water.pressure(Length.metres(30.48), InpNetwork.DENSITY).psi(), 1e-5);
    // The engine rounds a psi to 6.895 kPa.
    double kilopascals = Water.pressure(Length.metres(30.48), InpNetwork.DENSITY).kilopascals();
    assertEquals(298.760, kilopascals, 298.760 * 1e-4);
  }

  /**
   * Christiansen's share of full-flow friction that a pipe with equal fixed outlets loses, by the
   * power of flow in the law; the formula's figures lie within 0.002 of the exact sum.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "christiansen.csv", numLinesToSkip = 1)
  void lateralOfFixedOutlets_losesChristiansensShare(
      int n, double m175, double m1852, double m19, double m20) {
    assertEquals(m175, share(n, 1.75), 2e-3);
    assertEquals(m1852, share(n, 1.852), 2e-3);
    assertEquals(m19, share(n, 1.9), 2e-3);
    assertEquals(m20, share(n, 2.0), 2e-3);
  }

  /** Trap 8: the bare formula gives 1.008 for one outlet. */
  @Test
  void lateralOfOneOutlet_losesAll() {
    assertEquals(1, share(1, 1.75), 1e-9);
  }

  private static double share(int outlets, double power) {
    Friction law = (flowM3s, diameterM) -> Math.pow(flowM3s, power);
    Lateral lateral = new Lateral(outlets, 1, 0.0145, 0, law, new Emitter(0.01, 0));
    double lost = 100 - lateral.solve(100).headM()[outlets - 1];
    return lost / (law.gradient(0.01 * outlets, 0.0145) * outlets);
  }

  /** Trap 9: in dripline Hazen-Williams is 11 percent below Blasius; C of 132 would match. */
  @Test
  void hazenWilliams_inDripline_isTooLow() {
    double smooth = new SmoothTube(1.0e-6).gradient(lph(200), 0.0145);
    assertEquals(0.89, new HazenWilliams(140).gradient(lph(200), 0.0145) / smooth, 0.005);
    assertEquals(1, new HazenWilliams(131.7).gradient(lph(200), 0.0145) / smooth, 0.005);
  }

  @Property(seed = "20261125")
  void everyLaw_losesMoreWithMoreFlow_andLessInWiderPipe(
      @ForAll @DoubleRange(min = 1, max = 3000) double flowLph,
      @ForAll @DoubleRange(min = 8, max = 40) double mm) {
    Friction[] laws = {
      new HazenWilliams(140),
      new SmoothTube(1e-6),
      new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S)
    };
    for (Friction law : laws) {
      double loss = law.gradient(lph(flowLph), mm / 1000);
      assertTrue(loss > 0);
      assertTrue(law.gradient(lph(flowLph * 1.01), mm / 1000) > loss);
      assertTrue(law.gradient(lph(flowLph), mm / 1000 * 1.05) < loss);
    }
    double exponent =
        Math.log(
                laws[0].gradient(lph(flowLph), mm / 1000)
                    / laws[0].gradient(lph(flowLph), mm / 500))
            / Math.log(2);
    assertEquals(4.871, exponent, 1e-9);
  }

  @Property(seed = "20261125")
  void transition_joinsBothEnds(@ForAll @DoubleRange(min = 0, max = 0.02) double rough) {
    assertEquals(new FrictionFactor(rough).of(2000), new FrictionFactor(rough).of(2000.001), 1e-6);
    assertEquals(new FrictionFactor(rough).of(3999.999), new FrictionFactor(rough).of(4000), 1e-6);
  }
}
