package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Help as a first-time user reads it. */
class HelpTest {
  private static final Path HERE = Path.of("");

  private static List<String> commands() {
    return Pattern.compile("^  ([a-z]+)  ", Pattern.MULTILINE)
        .matcher(Run.in(HERE, "--help").out())
        .results()
        .map(m -> m.group(1))
        .toList();
  }

  @Test
  void everyCommand_hasHelpWithAnExample_andARowInTheReadme() throws Exception {
    assertTrue(commands().size() >= 8, commands()::toString);
    String readme = Files.readString(Path.of("..", "..", "README.md"));
    for (String command : commands()) {
      Run help = Run.in(HERE, command, "--help");
      assertEquals(ExitCode.FINE, help.code(), command);
      assertTrue(help.out().contains("  yardloom " + command + " "), command + " has no example");
      assertTrue(readme.contains("| `yardloom " + command), command + " is not in the README");
    }
  }
}
