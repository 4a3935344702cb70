package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import yardloom.kernel.unit.Flow;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;
import yardloom.water.pipe.formula.PipeNetwork.Solution;

/** Published figures of pipes and of networks that are no garden's, through the same solver. */
class PublishedRowsTest {
  private static final double FOOT = 0.3048;
  private static final double INCH = 0.0254;

  private static double gpm(double value) {
    return Flow.gallonsPerMinute(value).cubicMetresPerSecond();
  }

  /** HF-29, EPANET 2.2 User Manual, Table 3.2: plastic 0.005 × 10⁻³ ft (read). */
  @Test
  void plastic_isAsRoughAsTheManualSays() {
    assertEquals(0.005, 1000 * DarcyWeisbach.PLASTIC_M / 0.3048, 0.0001);
  }

  /**
   * HF-02, page on Hazen-Williams (read): 200 gpm through 30 ft of 3.048 in with C = 140 lose 2.7
   * ft by a form of the law that lies 1.3 percent above the engine's.
   */
  @Test
  void thirtyFeetOfPipe_loseWhatThePageSays() {
    Pipe pipe = new Pipe("p", "s", "j", 30 * FOOT, 3.048 * INCH, new HazenWilliams(140), 0);
    Solution solved =
        new PipeNetwork(
                List.of(new Joint("j", 0, gpm(200), null)),
                List.of(new Reservoir("s", 10 * FOOT)),
                List.of(pipe))
            .solve();
    double lost = 10 - solved.headM("j") / FOOT;
    assertEquals(2.7, lost, 2.7 * 0.016);
    assertEquals(30 * 88.89 / 1000, lost, 30 * 0.05 / 1000, "HF-03, the engine's form");
  }

  /** From, to, feet, inches: the pipes of EPANET example network 1 (US EPA, public domain). */
  private static final double[][] NET1 = {
    {10, 11, 10530, 18},
    {11, 12, 5280, 14},
    {12, 13, 5280, 10},
    {21, 22, 5280, 10},
    {22, 23, 5280, 12},
    {31, 32, 5280, 6},
    {2, 12, 200, 18},
    {11, 21, 5280, 10},
    {12, 22, 5280, 12},
    {13, 23, 5280, 8},
    {21, 31, 5280, 8},
    {22, 32, 5280, 6}
  };

  /** Name, feet above datum, gallons a minute at 0 h. */
  private static final double[][] NET1_JOINTS = {
    {11, 710, 150},
    {12, 700, 150},
    {13, 695, 100},
    {21, 700, 150},
    {22, 695, 200},
    {23, 690, 150},
    {31, 700, 100},
    {32, 710, 100}
  };

  /** The town with so much head, in feet, behind its pump, and 970 ft in its tank. */
  private static Solution town(double behindPumpFt) {
    List<Joint> joints = new ArrayList<>();
    for (double[] j : NET1_JOINTS) {
      joints.add(new Joint("" + (int) j[0], j[1] * FOOT, gpm(j[2]), null));
    }
    List<Pipe> pipes = new ArrayList<>();
    for (double[] p : NET1) {
      String from = "" + (int) p[0];
      String to = "" + (int) p[1];
      pipes.add(
          new Pipe(from + "-" + to, from, to, p[2] * FOOT, p[3] * INCH, new HazenWilliams(100), 0));
    }
    List<Reservoir> sources =
        List.of(new Reservoir("10", behindPumpFt * FOOT), new Reservoir("2", 970 * FOOT));
    return new PipeNetwork(joints, sources, pipes, DarcyWeisbach.ENGINE_GRAVITY).solve();
  }

  /**
   * HF-10, HF-09, EPANET 2.3.5 test suite (read): at 0 h 119.257 psi at node 11 and 1234.207 gpm in
   * link 11. Its pump lifts from 800 ft by 4/3 × 250 − 250 / 3 × (Q / 1500 gpm)² ft; the head
   * behind it is found by halving.
   */
  @Test
  void town_hasThePressureOfTheEngine() {
    double low = 970;
    double high = 1134;
    for (int i = 0; i < 50; i++) {
      double middle = (low + high) / 2;
      double q = Flow.cubicMetresPerSecond(town(middle).flowM3s("10-11")).gallonsPerMinute() / 1500;
      if (800 + 250 * (4 - q * q) / 3 > middle) {
        low = middle;
      } else {
        high = middle;
      }
    }
    Solution solved = town(low);
    assertEquals(119.257, InpNetwork.psi(solved.pressureM("11")), 0.001);
    double link11 = Flow.cubicMetresPerSecond(solved.flowM3s("11-12")).gallonsPerMinute();
    assertEquals(1234.207, link11, 1234.207 * 1e-4);
  }

  /**
   * HF-31, Crane TP-410M, example 7.19, with the library fluids (read): 11.5 ft of head through
   * sharp entrance 0.5, mitre bend 60 × 0.018, gate valve 8 × 0.018 and 10 ft of 3.068 in, then
   * sudden contraction 0.5 (1 − (2/3)²), 20 ft of 2 in and exit 1, in pipe of roughness 0.0018 in;
   * water 1.1 cP, 998.97 kg/m³. The book's 137 gpm takes the widths as 3 to 2; the true second bore
   * of 2.067 in is one percent wider, so the flow lies within two.
   */
  @Test
  void twoPipesWithFittings_giveWhatTheBookSays() {
    assertEquals(137, reservoirGpm(3.068 / 1.5), 137 * 0.01);
    assertEquals(137, reservoirGpm(2.067), 137 * 0.02);
  }

  private static double reservoirGpm(double secondIn) {
    DarcyWeisbach steel = new DarcyWeisbach(0.0018 * INCH, 1.1e-3 / 998.97);
    double first = 0.5 + 60 * 0.018 + 8 * 0.018;
    double second = 0.5 * (1 - 4 / 9.0) + 1;
    Solution solved =
        new PipeNetwork(
                List.of(new Joint("j", 0, 0, null)),
                List.of(new Reservoir("high", 11.5 * FOOT), new Reservoir("low", 0)),
                List.of(
                    new Pipe("wide", "high", "j", 10 * FOOT, 3.068 * INCH, steel, first),
                    new Pipe("narrow", "j", "low", 20 * FOOT, secondIn * INCH, steel, second)))
            .solve();
    assertEquals(solved.flowM3s("wide"), solved.flowM3s("narrow"), 1e-9);
    return Flow.cubicMetresPerSecond(solved.flowM3s("narrow")).gallonsPerMinute();
  }
}
