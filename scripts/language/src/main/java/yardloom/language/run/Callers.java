package yardloom.language.run;

import java.util.Arrays;
import java.util.function.IntSupplier;

/** Who called the helper, or the closure held in a variable, that a running word stands in. */
final class Callers {
  private static final StackWalker STACK = StackWalker.getInstance();

  private Callers() {}

  /**
   * The line of the outermost such call, as that is the one a reader looks for; 0 where there is
   * none. Blocks of words and closures of library loops are no calls: their line is the word's.
   */
  static int line() {
    Walk walk = new Walk();
    STACK.walk(
        stack ->
            stack.allMatch(f -> walk.on(f.getClassName(), f.getMethodName(), f::getLineNumber)));
    return walk.line;
  }

  /** The same of what a running script threw. */
  static int line(Throwable thrown) {
    Walk walk = new Walk();
    Arrays.stream(thrown.getStackTrace())
        .allMatch(f -> walk.on(f.getClassName(), f.getMethodName(), f::getLineNumber));
    return walk.line;
  }

  /** From the innermost frame outwards. */
  private static final class Walk {
    private String script = "";
    private boolean asked;
    private int line;

    /**
     * Takes the next frame; false if no further one tells anything.
     *
     * @param at the frame's line, which takes long to be found and is seldom needed
     */
    boolean on(String type, String method, IntSupplier at) {
      if (!isScript(type)) {
        // Guard runs blocks and parts of long bodies; the library runs the closures of its loops.
        asked &= !type.startsWith("yardloom.") && !isLoop(type);
        return true;
      }
      String own = type.contains("$") ? type.substring(0, type.indexOf('$')) : type;
      if (!script.isEmpty() && !script.equals(own)) {
        // What an included file draws is told by its own lines.
        return false;
      }
      script = own;
      if (method.equals("call")) {
        // A closure's own door to its doCall.
        return true;
      }
      int here = asked ? at.getAsInt() : 0;
      line = here > 0 ? here : line;
      asked = method.startsWith("h$") || method.equals("doCall");
      return true;
    }
  }

  private static boolean isLoop(String name) {
    return name.startsWith("org.codehaus.groovy.runtime.DefaultGroovyMethods")
        || name.startsWith("org.codehaus.groovy.runtime.StringGroovyMethods")
        || name.startsWith("java.util.");
  }

  private static boolean isScript(String name) {
    return name.startsWith("plan") && name.length() > 4 && Character.isDigit(name.charAt(4));
  }
}
