package yardloom.language.run;

import java.util.Arrays;
import java.util.Iterator;
import java.util.stream.Stream;

/** Who called the helper, or the closure held in a variable, that a running word stands in. */
final class Callers {
  private static final StackWalker STACK = StackWalker.getInstance();

  private Callers() {}

  /**
   * The line of the outermost such call, as that is the one a reader looks for; 0 where there is
   * none. Blocks of words and closures of library loops are no calls: their line is the word's.
   */
  static int line() {
    return STACK.walk(
        stack ->
            line(
                stack.map(f -> new Frame(f.getClassName(), f.getMethodName(), f.getLineNumber()))));
  }

  /** The same of what a running script threw. */
  static int line(Throwable thrown) {
    return line(
        Arrays.stream(thrown.getStackTrace())
            .map(f -> new Frame(f.getClassName(), f.getMethodName(), f.getLineNumber())));
  }

  private record Frame(String type, String method, int line) {}

  private static int line(Stream<Frame> stack) {
    Iterator<Frame> frames = stack.iterator();
    String script = "";
    int line = 0;
    boolean asked = false;
    while (frames.hasNext()) {
      Frame frame = frames.next();
      String name = frame.type();
      if (!isScript(name)) {
        // Guard runs blocks and parts of long bodies; the library runs the closures of its loops.
        asked &= !name.startsWith("yardloom.") && !isLoop(name);
        continue;
      }
      String own = name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
      if (!script.isEmpty() && !script.equals(own)) {
        // What an included file draws is told by its own lines.
        break;
      }
      script = own;
      if (frame.method().equals("call")) {
        // A closure's own door to its doCall.
        continue;
      }
      if (asked && frame.line() > 0) {
        line = frame.line();
      }
      asked = frame.method().startsWith("h$") || frame.method().equals("doCall");
    }
    return line;
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
