package yardloom.program.cli;

import java.nio.file.Path;

/** The plans that the README draws. */
final class Samples {
  static final Path FOLDER = Path.of("..", "samples").toAbsolutePath().normalize();

  private Samples() {}
}
