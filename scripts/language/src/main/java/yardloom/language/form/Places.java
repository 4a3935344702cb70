package yardloom.language.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.language.text.Report;

/**
 * Where steps stand: in the JSON file itself or, where a step says so with {@code "place"}, in the
 * script it was written from. Steps of an include count as a file of their own, since what a
 * regional file says is the region's.
 */
final class Places {
  /** What may stand for a file in messages. */
  static final String FILE = "[\\p{L}0-9_][\\p{L}0-9_./ -]{0,200}";

  /** File, line and column, and the line that called the helper they lie in. */
  static final String PLACE = "(" + FILE + "):([0-9]{1,7}):([0-9]{1,7})(?: from ([0-9]{1,7}))?";

  private static final Pattern PARTS = Pattern.compile(PLACE);

  private final String file;
  private final Report report;

  Places(String file, Report report) {
    this.file = file;
    this.report = report;
  }

  /** Whether a text may stand for a file in messages. */
  static boolean isFile(String name) {
    return name.matches(FILE);
  }

  Places inside(String included) {
    return new Places(file.replaceFirst(" \\(.*", "") + " (" + included + ")", report);
  }

  SourceRef of(Json.Obj node) {
    Json said = node.get("place");
    if (said == null) {
      return new SourceRef(file, node.line(), node.column());
    }
    Matcher parts = PARTS.matcher(said instanceof Json.Text t ? t.value() : "");
    if (!parts.matches()) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          report.place(said.line(), said.column()),
          "\"place\" says file, line and column of the script, as in \"yard.groovy:12:5\"; got "
              + said.kind());
    }
    return new SourceRef(
        parts.group(1),
        Integer.parseInt(parts.group(2)),
        Integer.parseInt(parts.group(3)),
        parts.group(4) == null ? 0 : Integer.parseInt(parts.group(4)));
  }
}
