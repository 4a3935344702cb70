package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a start of the program reads that it does not need is waited for at every draw. */
class StartsLeanTest {
  @Test
  void commandWithoutAnEditor_readsNothingOfItsProtocol() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                Main.class.getName(),
                "words",
                "units")
            .redirectErrorStream(true)
            .start();
    List<String> said =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .toList();
    assertEquals(0, process.waitFor());
    assertTrue(said.stream().anyMatch(l -> l.contains("yardloom.program.cli.EditorCommand")));
    assertEquals(List.of(), said.stream().filter(l -> l.contains("lsp4j.")).toList());
  }
}
