package yardloom.language.run;

import java.util.Map;
import yardloom.kernel.problem.SourceRef;

/** Called by compiled scripts only: {@code param}, {@code include} and {@code fileText}. */
public final class Builtins {
  private Builtins() {}

  public static Object param(
      String file, int line, int column, String name, Object fallback, String help) {
    return Run.present().param(new SourceRef(file, line, column), name, fallback, help);
  }

  public static void include(
      String file, int line, int column, String key, Map<String, Object> values) {
    Run.present().include(new SourceRef(file, line, column), key, values);
  }

  public static String fileText(String key) {
    return Run.present().fileText(key);
  }
}
