package yardloom.sun;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every row of sun-checks.csv is held by some test of this module that names it. */
class PublishedChecksTest {
  private static final String TESTS = read();

  private static String read() {
    try (Stream<Path> files = Files.walk(Path.of("src/test"))) {
      return files
          .filter(f -> f.toString().matches(".*\\.(java|csv)"))
          .filter(f -> !f.endsWith("sun-checks.csv") && !f.endsWith("PublishedChecksTest.java"))
          .map(PublishedChecksTest::text)
          .collect(Collectors.joining());
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

  @ParameterizedTest(name = "{0} {2}")
  @CsvFileSource(resources = "sun-checks.csv", numLinesToSkip = 1)
  void publishedCheck_isHeldByATest(
      String id,
      String section,
      String quantity,
      String inputs,
      String expected,
      String tolerance,
      String source,
      String mark,
      String rerun) {
    assertTrue(TESTS.contains(id), id);
  }
}
