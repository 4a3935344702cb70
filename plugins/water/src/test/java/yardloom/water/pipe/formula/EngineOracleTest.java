package yardloom.water.pipe.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.water.pipe.formula.PipeNetwork.Solution;

/**
 * Random trees and loops, every pressure within a millimetre of water of what another solver gives:
 * of the EPA's engine where {@code -Doracle.engine=FOLDER} names the folder in which {@code npm i
 * epanet-js@0.9.0} was run, and of {@link DenseNewton}. Run with -Pheavy; {@code -Doracle.networks}
 * says how many (200), {@code -Doracle.seed} which.
 */
class EngineOracleTest {
  private static final int NETWORKS = Integer.getInteger("oracle.networks", 200);
  private static final long SEED = Long.getLong("oracle.seed", 20261127L);
  private static final double NEAR_M = 0.001;

  @TempDir Path folder;

  private static RandomNetwork network(int i) {
    return new RandomNetwork(SEED * 1_000 + i);
  }

  /** A few in every build. */
  @Test
  void fewNetworks_agreeWithAFullMatrix() {
    agree(0, 12);
  }

  @Test
  @Tag("heavy")
  void allNetworks_agreeWithAFullMatrix() {
    agree(0, NETWORKS);
  }

  private static void agree(int from, int to) {
    int loops = 0;
    for (int i = from; i < to; i++) {
      RandomNetwork random = network(i);
      loops += random.pipes.size() > random.joints.size() ? 1 : 0;
      Solution ours = random.network().solve();
      double[] heads = new DenseNewton(random).headsM();
      for (int j = 0; j < heads.length; j++) {
        String id = random.joints.get(j).id();
        assertEquals(heads[j], ours.headM(id), NEAR_M, "network " + i + ", " + id);
      }
    }
    assertTrue(loops > (to - from) / 4, "loops: " + loops);
  }

  @Test
  @Tag("heavy")
  void allNetworks_agreeWithTheEngine() throws IOException, InterruptedException {
    String engine = System.getProperty("oracle.engine", "");
    Assumptions.assumeFalse(engine.isEmpty(), "no -Doracle.engine: the engine was not asked");
    Map<String, Solution> ours = new HashMap<>();
    for (int i = 0; i < NETWORKS; i++) {
      String file = String.format(java.util.Locale.ROOT, "n%04d.inp", i);
      Files.writeString(folder.resolve(file), network(i).inp());
      ours.put(file, network(i).network().solve());
    }
    int compared = 0;
    double worst = 0;
    for (String line : ask(engine).split("\\R")) {
      String[] parts = line.split(" ");
      if (parts.length == 3 && ours.containsKey(parts[0])) {
        double theirs = Double.parseDouble(parts[2]);
        double our = ours.get(parts[0]).pressureM(parts[1]);
        // Below a joint without head the engine lets water in; the program does not.
        if (ours.get(parts[0]).leastPressureM() > 0) {
          worst = Math.max(worst, Math.abs(theirs - our));
          assertEquals(theirs, our, NEAR_M, line);
          compared++;
        }
      }
    }
    assertTrue(compared > 15 * NETWORKS, "pressures compared: " + compared);
    assertTrue(worst > 0, "two solvers that agree to the last digit are one");
  }

  private String ask(String engine) throws IOException, InterruptedException {
    String script;
    try (InputStream in = EngineOracleTest.class.getResourceAsStream("engine.mjs")) {
      script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    Process node =
        new ProcessBuilder("node", "--input-type=module", "-e", script, "--", folder.toString())
            .directory(Path.of(engine).toFile())
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String out = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, node.waitFor(), "the engine ended with an error");
    return out;
  }
}
