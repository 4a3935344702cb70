package yardloom.program.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares text with a file kept in {@code src/test/resources/golden}. With {@code
 * -DupdateGolden=true} the file is written instead; look at it before you commit it.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src", "test", "resources", "golden");

  private Golden() {}

  public static void check(String name, String actual) {
    Path file = FOLDER.resolve(name);
    try {
      if (Boolean.getBoolean("updateGolden")) {
        Files.createDirectories(file.getParent());
        Files.writeString(file, actual, StandardCharsets.UTF_8);
        return;
      }
      if (!Files.exists(file)) {
        fail("no golden file " + name + "; write it with -DupdateGolden=true and look at it");
      }
      assertEquals(Files.readString(file, StandardCharsets.UTF_8), actual, name);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
