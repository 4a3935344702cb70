package yardloom.program.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bad site data beside the exact text people read. Each file under {@code messages} holds the plan,
 * data files after a line of dashes with their name, and last what is said. After a wanted change
 * run with {@code -DupdateGolden=true} and read the difference before committing it.
 */
class SiteMessagesTest {
  private static final String CUT = "-------- ";
  private static final String SAYS = CUT + "says\n";

  @TempDir Path folder;

  @TestFactory
  Stream<DynamicTest> message_ofBadSiteData_isAsPictured() throws Exception {
    return pictures().stream()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> compare(f)));
  }

  /** Place, value with unit and advice are in the pictures; here only what holds for all. */
  @Test
  void pictures_ofSiteData_areAtLeastTenAndNameAPlace() throws Exception {
    assertTrue(pictures().size() >= 10);
    for (Path picture : pictures()) {
      String all = Files.readString(picture);
      String says = all.substring(all.indexOf(SAYS) + SAYS.length());
      assertTrue(says.contains("plan.groovy:"), picture + " names no place");
      assertFalse(says.contains("Exception") || says.contains("NaN"), says);
    }
  }

  private static List<Path> pictures() throws IOException, URISyntaxException {
    Path messages =
        Path.of(SiteMessagesTest.class.getResource("/yardloom/program/sitefile/messages").toURI());
    try (Stream<Path> files = Files.list(messages)) {
      return files.sorted().toList();
    }
  }

  /** Without what plugins say about a plan that has no climate and no plants. */
  private static String ofTheSite(String said) {
    StringBuilder kept = new StringBuilder();
    boolean keep = true;
    for (String line : said.lines().toList()) {
      boolean finding = line.matches("\\(\\d+\\) (ERROR|WARNING|NOTE) .*");
      boolean detail = line.startsWith("    ");
      if (!detail) {
        keep =
            finding
                ? line.matches(".*\\[site\\..*")
                : line.contains("plan.groovy:") && line.endsWith("]");
      }
      if (keep) {
        kept.append(line.replaceFirst("^\\(\\d+\\) ", "")).append('\n');
      }
    }
    return kept.toString();
  }

  private void compare(Path picture) throws IOException {
    String all = Files.readString(picture);
    int says = all.indexOf(SAYS);
    String[] given = all.substring(0, says).split("(?m)^" + CUT);
    Path here = Files.createDirectories(folder.resolve(picture.getFileName().toString()));
    Files.writeString(here.resolve("plan.groovy"), given[0]);
    for (int i = 1; i < given.length; i++) {
      int line = given[i].indexOf('\n');
      Files.writeString(here.resolve(given[i].substring(0, line)), given[i].substring(line + 1));
    }
    Run run = Run.in(here, "check", "plan.groovy");
    String got = ofTheSite(run.out() + run.err()).replace(here + "/", "");
    if (Boolean.getBoolean("updateGolden")) {
      Path source = Path.of("src/test/resources/yardloom/program/sitefile/messages");
      Files.writeString(
          source.resolve(picture.getFileName().toString()),
          all.substring(0, says + SAYS.length()) + got);
    } else {
      assertEquals(all.substring(says + SAYS.length()), got);
    }
  }
}
