package yardloom.program.cli;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yardloom.program.golden.Golden;

/**
 * Guards everything that the samples print against drift; that it is right is proved elsewhere.
 *
 * <p>Tables, findings and calculations are kept as they are, so that a change can be read; of
 * sheets and results, which are large, only size and digest are kept.
 */
class SamplesGoldenTest {
  static List<String> plans() {
    return Samples.plans();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void sample_drawn_hasNotDrifted(String plan) {
    Map<String, String> kept = new TreeMap<>();
    StringBuilder digests = new StringBuilder();
    new TreeMap<>(Samples.drawn(plan))
        .forEach(
            (name, text) -> {
              if (name.endsWith(".csv") || name.endsWith(".txt")) {
                kept.put(name, text);
              } else {
                digests.append(digest(text)).append("  ").append(name).append('\n');
              }
            });
    kept.put("digests.txt", digests.toString());
    Golden.checkFolder(plan, kept, Samples.drawn(plan));
  }

  private static String digest(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
      return String.format("%8d %s", bytes.length, HexFormat.of().formatHex(sum));
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError(e);
    }
  }
}
