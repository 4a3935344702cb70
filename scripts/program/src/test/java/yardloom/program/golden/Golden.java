package yardloom.program.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Compares text with files kept in {@code src/test/resources/golden}. With {@code
 * -DupdateGolden=true} they are written instead; look at them before you commit.
 */
public final class Golden {
  private static final Path FOLDER = Path.of("src", "test", "resources", "golden");
  private static final Path ACTUAL = Path.of("target", "golden");

  private Golden() {}

  public static void check(String name, String actual) {
    Path file = FOLDER.resolve(name);
    try {
      if (Boolean.getBoolean("updateGolden")) {
        write(file, actual);
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

  /**
   * Compares a whole folder: files that are missing or too many are a difference too.
   *
   * @param everything what is written to {@code target/golden} where something differs
   */
  public static void checkFolder(
      String name, Map<String, String> actual, Map<String, String> everything) {
    Path folder = FOLDER.resolve(name);
    try {
      Map<String, String> kept = read(folder);
      if (Boolean.getBoolean("updateGolden")) {
        for (String gone : kept.keySet()) {
          Files.delete(folder.resolve(gone));
        }
        for (Map.Entry<String, String> file : actual.entrySet()) {
          write(folder.resolve(file.getKey()), file.getValue());
        }
        return;
      }
      TreeSet<String> names = new TreeSet<>(kept.keySet());
      names.addAll(actual.keySet());
      List<String> lines = new ArrayList<>();
      for (String file : names) {
        String difference = firstDifference(kept.get(file), actual.get(file));
        if (!difference.isEmpty()) {
          lines.add(file + ": " + difference);
        }
      }
      if (!lines.isEmpty()) {
        for (Map.Entry<String, String> file : everything.entrySet()) {
          write(ACTUAL.resolve(name).resolve(file.getKey()), file.getValue());
        }
        fail(
            name
                + " has drifted (all of it is now in target/golden/"
                + name
                + "; if it is meant, run with -DupdateGolden=true and look at each change):\n"
                + String.join("\n", lines));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What is different first, in words; empty if nothing is. */
  private static String firstDifference(String kept, String actual) {
    if (kept == null) {
      return "is new";
    } else if (actual == null) {
      return "is gone";
    }
    List<String> was = kept.lines().toList();
    List<String> is = actual.lines().toList();
    for (int i = 0; i < Math.max(was.size(), is.size()); i++) {
      String before = i < was.size() ? was.get(i) : "(end)";
      String now = i < is.size() ? is.get(i) : "(end)";
      if (!before.equals(now)) {
        return "line " + (i + 1) + "\n    was " + before + "\n    is  " + now;
      }
    }
    return kept.equals(actual) ? "" : "line ends";
  }

  private static Map<String, String> read(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          files.put(
              folder.relativize(file).toString().replace('\\', '/'),
              Files.readString(file, StandardCharsets.UTF_8));
        }
      }
    }
    return files;
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}
