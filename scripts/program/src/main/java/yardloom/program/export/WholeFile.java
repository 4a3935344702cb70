package yardloom.program.export;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;

/** Writes a file beside its place and moves it there when it is complete. */
public final class WholeFile {
  private WholeFile() {}

  /** Fills a stream. */
  public interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * @throws PlanException (FILE) if the file cannot be written; the old one is then still there
   */
  public static void write(Path file, Content content) {
    try {
      // Not a temporary file of the system: that one only its owner could read.
      Path part = file.resolveSibling("." + file.getFileName() + ".part");
      try {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
          content.writeTo(out);
        }
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      PlanException problem =
          new PlanException(ProblemCode.FILE, "cannot write " + file + ": " + e.getMessage());
      problem.initCause(e);
      throw problem;
    }
  }
}
