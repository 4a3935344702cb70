package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.water.bench.DripBenchmark;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;
import yardloom.water.pipe.formula.PipeNetwork.Solution;

/** What holds in every network, and the large one. */
class NetworkLawsTest {
  private static final Friction LAW =
      new DarcyWeisbach(DarcyWeisbach.PLASTIC_M, Water.VISCOSITY_M2S);

  /** EPANET 2.3 (npm epanet-js 0.9.0), run on the same 10,000 outlets: 14.90845 and 11.81608 m. */
  @Test
  void tenThousandOutlets_haveTheEnginesPressures() {
    Solution solved = DripBenchmark.network().solve();
    assertEquals(14.90845, solved.pressureM("E1_1"), 1e-3);
    assertEquals(11.81608, solved.pressureM("E100_100"), 1e-3);
  }

  /** Water that comes in goes out at each joint, to 1e-9 of all, and runs from high head to low. */
  @Property(tries = 200, seed = "20261127")
  void everyJoint_keepsMass_andWaterRunsDownhead(
      @ForAll @IntRange(min = 1, max = 60) int n,
      @ForAll @IntRange(min = 0, max = 8) int loops,
      @ForAll @IntRange(min = 0, max = 99_999) int seed) {
    Random random = new Random(seed);
    List<Joint> joints = new ArrayList<>();
    List<Pipe> pipes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Emitter outlet =
          random.nextInt(3) == 0
              ? null
              : Emitter.rated(
                  (1 + random.nextInt(8)) / 3.6e6, 10, 0.05 + 0.95 * random.nextDouble());
      boolean isCompensating = outlet != null && random.nextInt(4) == 0;
      // Now and then a joint lies above all water.
      double elevationM = random.nextInt(9) == 0 ? 14 : 3 * random.nextDouble();
      joints.add(new Joint("j" + i, elevationM, 0, isCompensating ? outlet.from(5) : outlet));
      pipes.add(pipe(i == 0 ? "s" : "j" + random.nextInt(i), "j" + i, i, random));
    }
    for (int k = 0; k < (n > 1 ? loops : 0); k++) {
      int to = 1 + random.nextInt(n - 1);
      pipes.add(pipe("j" + random.nextInt(to), "j" + to, n + k, random));
    }
    Solution s = new PipeNetwork(joints, List.of(new Reservoir("s", 12)), pipes).solve();
    double all = Arrays.stream(s.outletsM3s()).sum();
    double source = 0;
    for (Pipe pipe : pipes) {
      double flow = s.flowM3s(pipe.id());
      source += pipe.from().equals("s") ? flow : 0;
      double before = pipe.from().equals("s") ? 12 : s.headM(pipe.from());
      assertTrue(Math.abs(flow) < 1e-9 || (before - s.headM(pipe.to())) * flow > 0, pipe.id());
    }
    assertEquals(all, source, all * 1e-9 + 1e-14);
    for (Joint joint : joints) {
      double sum = -s.outletM3s(joint.id());
      for (Pipe pipe : pipes) {
        sum += pipe.to().equals(joint.id()) ? s.flowM3s(pipe.id()) : 0;
        sum -= pipe.from().equals(joint.id()) ? s.flowM3s(pipe.id()) : 0;
      }
      assertEquals(0, sum, all * 1e-9 + 1e-12, joint.id());
      double given = joint.emitter() == null ? 0 : joint.emitter().flowM3s(s.pressureM(joint.id()));
      assertEquals(given, s.outletM3s(joint.id()), given * 1e-6 + 1e-12, joint.id());
    }
  }

  private static Pipe pipe(String from, String to, int id, Random random) {
    double boreM = 0.012 + 0.015 * random.nextDouble();
    return new Pipe(
        "p" + id, from, to, 0.1 + 9 * random.nextDouble(), boreM, LAW, random.nextInt(4));
  }
}
