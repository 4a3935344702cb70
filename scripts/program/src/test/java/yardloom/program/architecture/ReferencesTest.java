package yardloom.program.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every class of formulas says where its arithmetic is from, or that it is plain geometry. */
class ReferencesTest {
  private static final Path ROOT = Path.of("..", "..");

  /** They hold what is read or measured and work nothing out. */
  private static final Set<String> NO_FORMULA =
      Set.of("package-info.java", "CallsTable.java", "DeedReader.java", "Spot.java");

  @Test
  void formulas_haveReferencesInTheirComment() throws IOException {
    List<String> without = new ArrayList<>();
    int seen = 0;
    for (Path file : sources()) {
      seen++;
      String text = Files.readString(file);
      int type =
          text.indexOf("\npublic ") < 0 ? text.indexOf("\nfinal ") : text.indexOf("\npublic ");
      String comment = type < 0 ? text : text.substring(0, type);
      if (!comment.contains("References:")) {
        without.add(ROOT.relativize(file).toString());
      }
    }
    assertTrue(seen > 110, seen + " classes of formulas seen");
    assertEquals(List.of(), without);
  }

  private static List<Path> sources() throws IOException {
    List<Path> found = new ArrayList<>();
    for (String room : List.of("kernel/core", "plugins")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(room))) {
        files.filter(ReferencesTest::isFormula).sorted().forEach(found::add);
      }
    }
    return found;
  }

  private static boolean isFormula(Path file) {
    String path = file.toString().replace('\\', '/');
    return path.contains("/src/main/java/")
        && path.endsWith(".java")
        && (path.contains("/formula/")
            || path.contains("/kernel/survey/")
            || path.contains("/kernel/ground/"))
        && !NO_FORMULA.contains(file.getFileName().toString());
  }
}
