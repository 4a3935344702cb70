package yardloom.program.plugin;

import java.nio.file.Path;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;

/**
 * A plugin that was found in a jar.
 *
 * @param id its own, or the name of its class as long as it has not said one
 */
record Guest(JarLoader loader, String id) {
  Path jar() {
    return loader.jar();
  }

  /** What to say when it breaks; who made it knows more, so the first cause is named. */
  PlanException broken(String what, Throwable thrown) {
    PlanException made =
        new PlanException(
            ProblemCode.PLUGIN_FAULT,
            new SourceRef(jar().toString(), 0, 0),
            "the plugin " + id + " " + what + ": " + cause(thrown) + ". " + WAY_OUT);
    made.initCause(thrown);
    return made;
  }

  static final String WAY_OUT =
      "Tell its makers, or leave it out: take the jar away or give --without with its id";

  /** The innermost cause in words. */
  static String cause(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null && cause.getCause() != cause) {
      cause = cause.getCause();
    }
    String said = cause.getMessage();
    String kind = cause.getClass().getSimpleName();
    return said == null || said.isBlank()
        ? kind
        : kind + ": " + said.lines().findFirst().orElse("");
  }
}
