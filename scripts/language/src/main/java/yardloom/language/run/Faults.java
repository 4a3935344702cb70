package yardloom.language.run;

import java.lang.reflect.InvocationTargetException;
import java.util.ConcurrentModificationException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.language.limit.LimitReached;
import yardloom.language.limit.Meter;
import yardloom.language.type.TypeWords;

/** Makes problems with a place of whatever a running script threw. */
final class Faults {
  private static final Pattern CAST =
      Pattern.compile("class (\\S+) cannot be cast to class (\\S+)");

  private static final Pattern SCRIPT_KINDS =
      Pattern.compile(
          "yardloom\\.kernel\\.(unit|geom|words|vocab)\\.\\w+|java\\.math\\.Big\\w+"
              + "|java\\.lang\\.(String|Boolean|Number|Integer|Long|Double)"
              + "|java\\.util\\.(List|Map|\\w*List|\\w*Map)|groovy\\.lang\\.GString"
              + "|org\\.codehaus\\.groovy\\.runtime\\.GStringImpl");

  private final Map<String, String> files;
  private final String file;

  /**
   * @param files the file of each compiled class
   * @param file the plan's own file
   */
  Faults(Map<String, String> files, String file) {
    this.files = files;
    this.file = file;
  }

  /** The file of a compiled class, below the plan's folder where it lies there. */
  String file(String className) {
    java.nio.file.Path shown = java.nio.file.Path.of(files.getOrDefault(className, file));
    java.nio.file.Path folder = java.nio.file.Path.of(file).getParent();
    return (folder != null && shown.startsWith(folder) ? folder.relativize(shown) : shown)
        .toString()
        .replace('\\', '/');
  }

  /** Whether it tells of a problem of the plan, not of a limit or a fault of the program. */
  static boolean isOfPlan(Throwable thrown) {
    return unwrapped(thrown) instanceof PlanException;
  }

  PlanException problem(Throwable thrown, Meter meter) {
    Throwable cause = unwrapped(thrown);
    SourceRef place = place(cause, meter);
    if (cause instanceof PlanException e) {
      return e.at(place);
    }
    PlanException made =
        new PlanException(List.of(new Problem(code(cause), place, message(cause))));
    made.initCause(cause);
    return made;
  }

  private static Throwable unwrapped(Throwable thrown) {
    Throwable cause = thrown;
    while (cause.getCause() != null
        && (cause instanceof org.codehaus.groovy.runtime.InvokerInvocationException
            || cause instanceof InvocationTargetException)) {
      cause = cause.getCause();
    }
    return cause;
  }

  private static ProblemCode code(Throwable cause) {
    if (cause instanceof LimitReached
        || cause instanceof StackOverflowError
        || cause instanceof OutOfMemoryError) {
      return ProblemCode.LIMIT;
    } else if (cause instanceof IllegalArgumentException
        || cause instanceof ArithmeticException
        || cause instanceof ConcurrentModificationException
        || cause instanceof IllegalStateException && !isOurs(cause)) {
      return ProblemCode.OUT_OF_RANGE;
    } else if (cause instanceof ClassCastException && (inScript(cause) || isOfScript(cause))
        || cause instanceof groovy.lang.MissingMethodException
        || cause instanceof NullPointerException && inScript(cause)) {
      return ProblemCode.WRONG_TYPE;
    }
    return ProblemCode.INTERNAL;
  }

  private static boolean isOurs(Throwable cause) {
    return cause.getStackTrace().length > 0
        && cause.getStackTrace()[0].getClassName().startsWith("yardloom.language.");
  }

  /**
   * Whether a value of a kind that scripts hold met another inside a word, as the elements of a
   * list do, which nobody checks before. Any other mix of types there is our own fault.
   */
  private static boolean isOfScript(Throwable cause) {
    Matcher said = CAST.matcher(String.valueOf(cause.getMessage()));
    return said.find() && isScriptKind(said.group(1)) && isScriptKind(said.group(2));
  }

  private static boolean isScriptKind(String type) {
    return SCRIPT_KINDS.matcher(type).matches();
  }

  /** What stands there and what is needed, in the words of the language. */
  private static Optional<String> met(Throwable cause) {
    Matcher said = CAST.matcher(String.valueOf(cause.getMessage()));
    if (!said.find() || !isScriptKind(said.group(1)) || !isScriptKind(said.group(2))) {
      return Optional.empty();
    }
    try {
      Class<?> got = Class.forName(said.group(1));
      Class<?> wanted = Class.forName(said.group(2));
      return Optional.of(
          "this needs " + TypeWords.needed(wanted) + "; got " + TypeWords.a(got) + " from its row");
    } catch (ClassNotFoundException e) {
      return Optional.empty();
    }
  }

  private static String mixedTypes(Throwable cause) {
    Matcher said = CAST.matcher(String.valueOf(cause.getMessage()));
    String met =
        said.find()
            ? simple(said.group(1)) + " stands where " + simple(said.group(2)) + " is needed"
            : "a value has another type than is needed";
    return met
        + ", perhaps in a list given to this word; if what you gave is right, it is a fault of the"
        + " program: please report it with this script";
  }

  private static String simple(String type) {
    return type.substring(type.lastIndexOf('.') + 1);
  }

  /** Whether a fault came from the script itself, not from inside a word. */
  private static boolean inScript(Throwable cause) {
    for (StackTraceElement frame : cause.getStackTrace()) {
      String name = frame.getClassName();
      if (isScript(name)) {
        return true;
      }
      if (name.startsWith("yardloom.") && !name.startsWith("yardloom.language.")) {
        return false;
      }
    }
    return false;
  }

  private static String message(Throwable cause) {
    if (cause instanceof StackOverflowError) {
      return "helpers or closures call each other too deeply";
    } else if (cause instanceof OutOfMemoryError) {
      return "the script uses more memory than there is";
    } else if (cause instanceof ClassCastException && !inScript(cause) && isOfScript(cause)) {
      return mixedTypes(cause);
    } else if (cause instanceof ClassCastException && inScript(cause)
        || cause instanceof groovy.lang.MissingMethodException) {
      return met(cause)
          .orElse(
              "a value here has another type than is needed; declare the types of closure"
                  + " parameters, as in { Length x -> … }");
    } else if (cause instanceof ConcurrentModificationException) {
      return "a list cannot be changed by the loop that goes through it";
    } else if (cause instanceof NullPointerException && inScript(cause)) {
      return "a value here is null; nothing can be done with it";
    }
    String said = cause.getMessage();
    boolean known = code(cause) != ProblemCode.INTERNAL && said != null && !said.isBlank();
    return known
        ? said
        : "a fault of the program itself ("
            + cause.getClass().getSimpleName()
            + (said == null ? "" : ": " + said)
            + "); please report it with this script";
  }

  /**
   * The innermost word, if the fault came from inside it; otherwise the line of the script that was
   * running.
   */
  private SourceRef place(Throwable cause, Meter meter) {
    Optional<SourceRef> word = meter.word();
    for (StackTraceElement frame : cause.getStackTrace()) {
      String name = frame.getClassName();
      if (isScript(name) && frame.getLineNumber() > 0) {
        String own = files.getOrDefault(name.replaceFirst("\\$.*", ""), file);
        boolean same = word.isPresent() && word.get().line() == frame.getLineNumber();
        return same
            ? word.get()
            : new SourceRef(own, frame.getLineNumber(), 0, Callers.line(cause));
      }
      if (name.startsWith("yardloom.") && !name.startsWith("yardloom.language.")) {
        break;
      }
    }
    return word.orElse(new SourceRef(file, 0, 0));
  }

  private static boolean isScript(String className) {
    return className.matches("plan[0-9]+(\\$.*)?");
  }
}
