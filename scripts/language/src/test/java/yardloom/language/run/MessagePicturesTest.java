package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.problem.PlanException;

/**
 * Bad scripts beside the exact text people read. Each file under {@code messages} holds the script,
 * a line of dashes, and the messages. After a wanted change run with {@code -DupdateGolden=true}
 * and read the difference before committing it.
 */
class MessagePicturesTest {
  private static final String CUT = "\n--------\n";

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> message_ofEachBadScript_isAsPictured() throws Exception {
    return files().stream()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> compare(f)));
  }

  @Test
  void pictures_ofMessages_areAtLeastTwentyFive() throws Exception {
    assertTrue(files().size() >= 25);
  }

  private static List<Path> files() throws Exception {
    Path messages =
        Path.of(MessagePicturesTest.class.getResource("/yardloom/language/messages").toURI());
    try (Stream<Path> files = Files.list(messages)) {
      return files.sorted().toList();
    }
  }

  private void compare(Path file) throws IOException {
    String all = Files.readString(file);
    int cut = all.indexOf(CUT);
    String script = cut < 0 ? all : all.substring(0, cut + 1);
    Path plan = Files.writeString(folder.resolve("plan.groovy"), script);
    PlanRunner runner =
        new PlanRunner(
            TestWords.lexicon(),
            OneLinerProbesTest.SMALL,
            (scope, word) -> word.equals("mulch") ? Optional.of("materials") : Optional.empty());
    Map<String, String> overrides =
        file.getFileName().toString().contains("parameter") ? Map.of("width", "3") : Map.of();
    PlanException e = assertThrows(PlanException.class, () -> runner.run(plan, overrides));
    String got =
        e.problems().stream()
            .map(p -> p.toString().replace(plan.toString(), "plan.groovy") + "\n")
            .collect(Collectors.joining());
    if (Boolean.getBoolean("updateGolden")) {
      Path source =
          Path.of("src/test/resources/yardloom/language/messages", file.getFileName().toString());
      Files.writeString(source, script.stripTrailing() + CUT + got);
    } else {
      assertEquals(all.substring(cut + CUT.length()), got);
    }
  }
}
