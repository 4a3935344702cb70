package yardloom.language.compile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HexFormat;
import yardloom.kernel.problem.PlanException;

/**
 * A script or data file that a plan was read from.
 *
 * @param asked the file as it was looked for
 * @param real the file that was found there, links followed
 * @param sum the check sum of its text
 */
public record SourceFile(String asked, String real, String sum) {
  /**
   * That of a plan itself.
   *
   * @throws IOException if there is no such file any more
   */
  public static SourceFile of(Path asked, String text) throws IOException {
    return new SourceFile(asked.toString(), asked.toRealPath().toString(), sum(text));
  }

  /** Whether the same place still leads to the same text; false if it cannot be read. */
  public boolean isUnchanged() {
    try {
      Path now = Path.of(asked).toRealPath();
      return now.toString().equals(real) && sum(ScriptFiles.readAny(now)).equals(sum);
    } catch (IOException | InvalidPathException | PlanException e) {
      return false;
    }
  }

  static String sum(String text) {
    return HexFormat.of().formatHex(Sha256.begin().digest(text.getBytes(StandardCharsets.UTF_8)));
  }
}
