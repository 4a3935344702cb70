package yardloom.language.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Unit;

/** Says a parser's error in the words of the language, after a look at the text near it. */
public final class SyntaxWords {
  private static final Pattern CURLY = Pattern.compile("[\u2018\u2019\u201C\u201D]");
  private static final Pattern BARE_UNIT =
      Pattern.compile("(?<![\\w.])(\\d+(?:\\.\\d+)?)\\s*([a-zA-Z]{1,6}\\d?)\\b");
  private static final Pattern MISSING_COMMA =
      Pattern.compile("([\\w'\")\\]}])\\s+(\\w+)\\s*:(?!:)");

  private SyntaxWords() {}

  static void report(int line, int column, String groovy, SourceText source, Report report) {
    String text = source.line(line);
    Matcher curly = CURLY.matcher(text);
    if (curly.find()) {
      report.add(
          ProblemCode.SYNTAX,
          line,
          curly.start() + 1,
          "a curly quote; write straight quotes, as in 'south bed'");
      return;
    }
    if (bareUnit(line, source, report)) {
      return;
    }
    Matcher twice = Pattern.compile("Duplicated named parameter '(.*)' found").matcher(groovy);
    if (twice.find()) {
      report.add(
          ProblemCode.DUPLICATE,
          line,
          column,
          "the option `" + twice.group(1) + "` is given twice");
      return;
    }
    Matcher comma = MISSING_COMMA.matcher(text);
    if (groovy.contains("':'") && comma.find()) {
      report.add(
          ProblemCode.SYNTAX,
          line,
          comma.start(2) + 1,
          "a comma is missing before `" + comma.group(2) + ":`");
      return;
    }
    int[] open = source.openBracket();
    if (open != null) {
      report.add(
          ProblemCode.SYNTAX,
          open[0],
          open[1],
          "the `" + (char) open[2] + "` that opens here is never closed");
      return;
    }
    report.add(ProblemCode.SYNTAX, line, column, reworded(groovy));
  }

  /** Reports a unit written against its number, if the line holds one. */
  public static boolean bareUnit(int line, SourceText source, Report report) {
    Matcher unit = BARE_UNIT.matcher(source.line(line));
    while (unit.find()) {
      String word = Unit.byWord(unit.group(2)).map(Unit::word).orElse("");
      if (!word.isEmpty()) {
        report.add(
            ProblemCode.SYNTAX,
            line,
            unit.start() + 1,
            "a unit follows its number after a dot: " + unit.group(1) + "." + word);
        return true;
      }
    }
    return false;
  }

  private static String reworded(String groovy) {
    String first = groovy.lines().findFirst().orElse("");
    if (first.startsWith("Unexpected character: '\\''")
        || first.startsWith("Unexpected character: '\"'")) {
      return "a text begins here and never ends; close its quote";
    }
    Matcher sign = Pattern.compile("Unexpected (?:input|character): '(.*)'").matcher(first);
    if (sign.find()) {
      String found = sign.group(1);
      if (found.isBlank() || found.contains("EOF")) {
        return "the script ends too early; a bracket or brace is still open";
      }
      if ("²³".contains(found.strip())) {
        return "a script writes square and cubic units as sqm, sqft, m3, yd3, as in 12.sqm";
      }
      return "`"
          + found.strip()
          + "` cannot stand here; look for a missing comma, bracket or quote"
          + " just before it";
    }
    if (first.contains("<EOF>")
        || first.contains("Missing ')'")
        || first.contains("Missing '}'")
        || first.contains("Missing ']'")) {
      return "a bracket or brace is opened and never closed";
    }
    if (first.startsWith("Number") || first.contains("number")) {
      return "this number cannot be read";
    }
    // Groovy's own sentence, when we know no better; it names no Java class at this stage.
    return "this cannot be read as a script (" + first.replaceAll("\\s+@ line.*", "") + ")";
  }
}
