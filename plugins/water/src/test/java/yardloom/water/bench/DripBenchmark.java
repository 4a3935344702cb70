package yardloom.water.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import yardloom.water.pipe.formula.DarcyWeisbach;
import yardloom.water.pipe.formula.Emitter;
import yardloom.water.pipe.formula.Friction;
import yardloom.water.pipe.formula.PipeNetwork;
import yardloom.water.pipe.formula.PipeNetwork.Joint;
import yardloom.water.pipe.formula.PipeNetwork.Pipe;
import yardloom.water.pipe.formula.PipeNetwork.Reservoir;
import yardloom.water.pipe.formula.Water;

/**
 * Times the hydraulic solve, parsing apart, of 100 rows of 100 outlets off one header; {@code
 * benchmark.sh} runs it beside the EPA's engine on the same network.
 */
public final class DripBenchmark {
  private static final int ROWS = 100;
  private static final int OUTLETS = 100;
  private static final int WARM = 100;
  private static final int TRIES = 7;

  private DripBenchmark() {}

  /** The network, 15 m of head at its source, at the engine's gravity. */
  public static PipeNetwork network() {
    Friction law = new DarcyWeisbach(0.0015e-3, Water.VISCOSITY_M2S, DarcyWeisbach.ENGINE_GRAVITY);
    Emitter outlet = new Emitter(2.0 / 3.6e6 / Math.sqrt(10), 0.5);
    List<Joint> joints = new ArrayList<>();
    List<Pipe> pipes = new ArrayList<>();
    for (int i = 1; i <= ROWS; i++) {
      String start = "M" + i;
      joints.add(new Joint(start, 0, 0, null));
      pipes.add(pipe(i == 1 ? "S" : "M" + (i - 1), start, 0.5, 0.050, law));
      for (int j = 1; j <= OUTLETS; j++) {
        String next = "E" + i + "_" + j;
        joints.add(new Joint(next, 0, 0, outlet));
        pipes.add(pipe(j == 1 ? start : "E" + i + "_" + (j - 1), next, 0.3, 0.0145, law));
      }
    }
    return new PipeNetwork(joints, List.of(new Reservoir("S", 15)), pipes);
  }

  private static Pipe pipe(String from, String to, double lengthM, double boreM, Friction law) {
    return new Pipe(from + "-" + to, from, to, lengthM, boreM, law, 0);
  }

  /** Prints the median, least and most processor milliseconds, and the pressures at both ends. */
  public static void main(String[] args) {
    PipeNetwork network = network();
    for (int i = 0; i < WARM; i++) {
      network.solve();
    }
    ThreadMXBean thread = ManagementFactory.getThreadMXBean();
    double[] ms = new double[TRIES];
    PipeNetwork.Solution solved = null;
    for (int i = 0; i < TRIES; i++) {
      long start = thread.getCurrentThreadCpuTime();
      solved = network.solve();
      ms[i] = (thread.getCurrentThreadCpuTime() - start) / 1e6;
    }
    Arrays.sort(ms);
    System.out.printf(
        Locale.ROOT,
        "ours: processor ms median %.2f min %.2f max %.2f p first %.5f p last %.5f%n",
        ms[TRIES / 2],
        ms[0],
        ms[TRIES - 1],
        solved.pressureM("E1_1"),
        solved.pressureM("E100_100"));
  }
}
