package yardloom.program.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import yardloom.program.cache.KeptDrawings;

/** Runs the command line in this process and keeps what it prints. */
record Run(int code, String out, String err) {

  /** Runs with relative paths below {@code base}. */
  static Run in(Path base, String... args) {
    return in(base, KeptDrawings.OFF, args);
  }

  /** The same with what was drawn before. */
  static Run in(Path base, KeptDrawings kept, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    int code = Main.run(console, base, () -> kept, args);
    return new Run(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** Every file below a folder with its text, by relative path. */
  static Map<String, String> files(Path folder) {
    Map<String, String> files = new TreeMap<>();
    try (var all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(file).toString().replace('\\', '/'),
            Files.readString(file, StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }
}
