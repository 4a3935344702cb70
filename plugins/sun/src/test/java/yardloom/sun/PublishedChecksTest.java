package yardloom.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The list of published figures, and what each of them holds. {@code production}: a test reckons it
 * through a method that the program itself calls, named in the row. {@code library}: it measures
 * the library alone, on which the program stands; not counted. {@code guide}: it is quoted, not
 * reckoned; not counted.
 */
class PublishedChecksTest {
  private static final List<String> MAIN = lines("src/main", ".*\\.java");
  private static final List<String> TESTS = lines("src/test", ".*\\.(java|csv)");

  private static List<String> lines(String folder, String files) {
    try (Stream<Path> all = Files.walk(Path.of(folder))) {
      return all.filter(f -> f.toString().matches(files))
          .filter(f -> !f.endsWith("sun-checks.csv") && !f.endsWith("PublishedChecksTest.java"))
          .flatMap(f -> text(f).lines())
          .map(String::strip)
          .filter(line -> !line.startsWith("*") && !line.startsWith("//") && !line.startsWith("/*"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How often a method is named, its own declaration included; comments do not count. */
  private static long calls(String method) {
    Pattern call = Pattern.compile("\\b" + method + "\\(");
    return MAIN.stream().mapToLong(line -> call.matcher(line).results().count()).sum();
  }

  @ParameterizedTest(name = "{0} {2}")
  @CsvFileSource(resources = "sun-checks.csv", numLinesToSkip = 1)
  void publishedFigure_isDataOfATest_throughWhatTheProgramCalls(
      String id,
      String section,
      String quantity,
      String inputs,
      String expected,
      String tolerance,
      String source,
      String mark,
      String rerun,
      String kind,
      String through)
      throws ClassNotFoundException {
    assertTrue(TESTS.stream().anyMatch(line -> line.contains(id)), id + " is no test's data");
    if (!kind.equals("production")) {
      assertTrue(List.of("library", "guide").contains(kind), kind);
      return;
    }
    Matcher method = Pattern.compile("(\\w+)\\.(\\w+)").matcher(through);
    assertTrue(method.matches(), through);
    assertTrue(
        MAIN.stream().anyMatch(line -> line.contains(method.group(1) + " ")), "no " + through);
    assertTrue(calls(method.group(2)) > 1, "the program never calls " + through);
  }

  @Test
  void list_holdsMostlyWhatTheProgramReckons() throws IOException {
    List<String> rows =
        Files.readAllLines(Path.of("src/test/resources/yardloom/sun/sun-checks.csv"));
    long production = rows.stream().filter(row -> row.contains(",production,")).count();
    long library = rows.stream().filter(row -> row.endsWith(",library,")).count();
    assertEquals(rows.size() - 1, production + library + 1, "and one guide");
    assertTrue(production >= 70, production + " through the program, " + library + " are not");
  }
}
