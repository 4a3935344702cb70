package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.unit.Unit;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;
import yardloom.water.pipe.formula.PipeNetwork.Solution;

/** The reference networks against what the EPANET engine gives for them. */
class NetworkTest {
  private static final Map<String, Solution> SOLVED = new HashMap<>();

  private static Solution solve(String name) throws IOException {
    if (!SOLVED.containsKey(name)) {
      SOLVED.put(name, InpNetwork.read(name).network.solve());
    }
    return SOLVED.get(name);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "engine.csv", numLinesToSkip = 1)
  void network_givesWhatTheEngineGives(
      String name, String quantity, String of, double expected, String unit) throws IOException {
    Solution s = solve(name);
    InpNetwork input = InpNetwork.read(name);
    double si =
        switch (quantity) {
          case "inflow" -> s.flowM3s(input.supply);
          case "pressure" -> s.pressureM(of);
          case "least pressure" ->
              s.leastPressureM();
          case "outlet" -> s.outletM3s(of);
          case "pipe" -> s.flowM3s(of);
          case "loss to" -> input.sourceHeadM - s.headM(of);
          default -> throw new IllegalArgumentException(quantity);
        };
    boolean isHead = unit.equals("m") || unit.equals("psi");
    double found =
        unit.equals("psi") ? InpNetwork.psi(si) : Unit.byWord(unit).orElseThrow().fromSi(si);
    // Printed flows are rounded to 2 to 6 digits; half a unit of the last is allowed.
    double tolerance = isHead ? 1e-3 : Math.max(Math.abs(expected) * 1e-4, 0.005);
    assertEquals(expected, found, tolerance, name + " " + quantity + " " + of);
  }

  @Test
  void loop_keepsMass_andRaisesTheLeastPressure() throws IOException {
    Solution loop = solve("E7L");
    double stubs = 0;
    for (String pipe : List.of("PE1", "PE2", "PE3", "PE4")) {
      stubs += loop.flowM3s(pipe);
    }
    assertEquals(0, stubs, 1e-12);
    double inLoop = loop.leastPressureM();
    double inTree = solve("E7").leastPressureM();
    assertTrue(inLoop > inTree);
    double out = Arrays.stream(loop.outletsM3s()).sum();
    assertEquals(loop.flowM3s("PM1"), out, out * 1e-9);
  }

  /** The march along a lateral and the network solver are independent; they must agree. */
  @Test
  void lateralMarch_agreesWithTheNetwork() throws IOException {
    Emitter emitter = Emitter.rated(2.0 / 3.6e6, 10, 0.5);
    Lateral lateral = new Lateral(100, 0.30, 0.0145, 0, new HazenWilliams(140), emitter);
    Lateral.Solution march = lateral.solve(10);
    Solution network = solve("E1");
    assertEquals(network.flowM3s("P1"), march.inflowM3s(), 1e-10);
    assertEquals(network.pressureM("E100"), march.headM()[99], 1e-6);
  }

  @Test
  void net1Pressure_isHeadLessElevation_atTheEnginesConstant() {
    // HF-11: head 991.574 ft at elevation 710 ft is 122.006 psi in the engine's own test.
    assertEquals(122.006, InpNetwork.psi((991.574 - 710) * 0.3048), 1e-3);
  }

  @Test
  void fittings_addToTheLossOfAPipe() {
    Joint tap = new Joint("tap", 0, 2e-4, null);
    Reservoir source = new Reservoir("source", 10);
    double bare = pressure(tap, source, 0);
    double fitted = pressure(tap, source, Fitting.SHORT_ELBOW.k() + Fitting.TEE_BRANCH.k());
    double speed = PipeSpeed.metresPerSecond(2e-4, 0.015);
    assertEquals(
        // 0.9 and 1.8 of v² / 2 g (EPANET 2.2 manual, Table 3.3)
        2.7 * speed * speed / (2 * 9.80665),
        bare - fitted,
        1e-9);
  }

  private static double pressure(Joint tap, Reservoir source, double k) {
    Pipe pipe = new Pipe("p", "source", "tap", 20, 0.015, new HazenWilliams(140), k);
    return new PipeNetwork(List.of(tap), List.of(source), List.of(pipe))
        .solve()
        .pressureM("tap");
  }

  /**
   * An outlet 3 m above a source of 2 m is dry; the engine let 1.1 L/h in (issue of the project).
   */
  @Test
  void outletAboveTheSource_givesNothing_andTakesNothingIn() {
    Emitter emitter = Emitter.rated(2.0 / 3.6e6, 10, 0.5);
    Joint low = new Joint("low", 0, 0, emitter);
    Joint high = new Joint("high", 3, 0, emitter);
    Reservoir source = new Reservoir("source", 2);
    Pipe first = new Pipe("p1", "source", "low", 10, 0.0145, new HazenWilliams(140), 0);
    Pipe second = new Pipe("p2", "low", "high", 10, 0.0145, new HazenWilliams(140), 0);
    Solution s =
        new PipeNetwork(List.of(low, high), List.of(source), List.of(first, second)).solve();
    assertEquals(0, s.outletM3s("high"));
    assertEquals(-1, s.pressureM("high"), 1e-3);
    // What is left is one outlet below 2 m of water: 2 L/h × √(2 / 10) = 0.8944 L/h.
    assertEquals(0.8944, s.outletM3s("low") * 3.6e6, 1e-3);
    assertEquals(s.outletM3s("low"), s.flowM3s("p1"), 1e-11);
  }

  @Test
  void networksThatCannotBe_areRefused() {
    Joint joint = new Joint("a", 0, 0, null);
    Reservoir source = new Reservoir("s", 10);
    assertThrows(
        IllegalArgumentException.class,
        () -> new PipeNetwork(List.of(joint), List.of(), List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new PipeNetwork(List.of(joint, joint), List.of(source), List.of()));
    Pipe loose = new Pipe("p", "a", "nowhere", 1, 0.01, new HazenWilliams(140), 0);
    assertThrows(
        IllegalArgumentException.class,
        () -> new PipeNetwork(List.of(joint), List.of(source), List.of(loose)));
    assertThrows(
        IllegalArgumentException.class,
        () -> new PipeNetwork(List.of(joint), List.of(source), List.of()));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new PipeNetwork(
                List.of(new Joint("a", 0, 0, new Emitter(1e-6, 0))),
                List.of(source),
                List.of(new Pipe("p", "s", "a", 1, 0.01, new HazenWilliams(140), 0))));
  }
}
