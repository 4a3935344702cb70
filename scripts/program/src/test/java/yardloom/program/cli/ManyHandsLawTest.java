package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.hands.Hands;
import yardloom.kernel.hands.LastFirst;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.study.Outcome;
import yardloom.program.hands.ManyHands;
import yardloom.program.output.OutputKind;
import yardloom.program.output.PlanWriter;

/** How many hands there are and who comes first shows in no byte of what is written. */
class ManyHandsLawTest {
  private static final Toolkit TOOLKIT = Toolkit.load();

  @TempDir Path folder;

  @Test
  void draw_byAnyHands_writesTheSame() throws IOException {
    Plan plan = TOOLKIT.read(Samples.FOLDER.resolve("urbana-yard.groovy"), Map.of());
    Map<String, byte[]> one = drawn(plan, Hands.ONE);
    assertSame(one, drawn(plan, new LastFirst()));
    for (int i = 0; i < 3; i++) {
      assertSame(one, drawn(plan, new ManyHands()));
    }
  }

  private static void assertSame(Map<String, byte[]> one, Map<String, byte[]> many) {
    assertEquals(one.keySet(), many.keySet());
    one.forEach((file, bytes) -> assertArrayEquals(bytes, many.get(file), file));
  }

  private Map<String, byte[]> drawn(Plan plan, Hands hands) throws IOException {
    Outcome outcome = TOOLKIT.study(plan, hands);
    Path out = Files.createTempDirectory(folder, "drawn");
    new PlanWriter(
            outcome,
            Papers.of(null, plan),
            EnumSet.of(OutputKind.SVG, OutputKind.CSV, OutputKind.JSON, OutputKind.GEOJSON),
            List.of(),
            hands)
        .write(out);
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(out)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(out.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }
}
