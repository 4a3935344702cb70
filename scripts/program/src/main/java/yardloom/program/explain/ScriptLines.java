package yardloom.program.explain;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.problem.SourceRef;

/** What stands on the lines of scripts and data files that a plan was read from. */
public final class ScriptLines {
  private static final int LONGEST = 88;

  private final Path base;
  private final Map<String, List<String>> files = new HashMap<>();

  /**
   * Reads files when they are asked for.
   *
   * @param base what relative names of files are resolved against
   */
  public ScriptLines(Path base) {
    this.base = base;
  }

  /** The line, shortened; empty if the place names no line that can be read. */
  public Optional<String> at(SourceRef place) {
    List<String> lines = files.computeIfAbsent(place.file(), this::read);
    if (place.line() < 1 || place.line() > lines.size()) {
      return Optional.empty();
    }
    String line = lines.get(place.line() - 1).strip();
    return Optional.of(line.length() <= LONGEST ? line : line.substring(0, LONGEST - 1) + "…");
  }

  private List<String> read(String file) {
    try {
      return Files.readAllLines(base.resolve(file), StandardCharsets.UTF_8);
    } catch (IOException | InvalidPathException e) {
      // The line's number stands there all the same.
      return List.of();
    }
  }
}
