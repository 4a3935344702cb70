package yardloom.language.typed;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.codehaus.groovy.ast.ASTNode;
import yardloom.language.type.ScriptTypes;
import yardloom.language.type.TypeWords;

/** Says the static compiler's errors in the words of the language. */
final class CompilerWords {
  private static final Pattern ASSIGN =
      Pattern.compile("Cannot assign value of type (.+) to variable of type (.+)");
  private static final Pattern RETURN =
      Pattern.compile("Cannot return value of type (.+) (?:for|on) .*?type (.+)");
  private static final Pattern NO_METHOD =
      Pattern.compile("Cannot find matching method (.+?)#(\\w+)\\((.*)\\).*", Pattern.DOTALL);

  private CompilerWords() {}

  static String reword(String message, ASTNode node) {
    String text = message.replaceFirst("^\\[Static type checking\\] - ", "");
    Matcher assign = ASSIGN.matcher(text);
    if (assign.find()) {
      return "this name holds " + a(assign.group(2)) + "; got " + a(assign.group(1));
    }
    Matcher back = RETURN.matcher(text);
    if (back.find()) {
      return "the helper returns " + a(back.group(2)) + "; got " + a(back.group(1));
    }
    Matcher none = NO_METHOD.matcher(text);
    if (none.find()) {
      String name = none.group(2);
      return "`" + name + "` cannot be used on " + a(none.group(1)) + " in this way";
    }
    if (text.startsWith("Possible loss of precision")) {
      return "a whole number is needed here; got a decimal";
    }
    if (text.startsWith("Cannot call closure")) {
      return "the closure takes other values than these";
    }
    return "the types do not fit here: "
        + text.replaceAll("\\b(?:[a-z]+\\.)+(?=[A-Z])", "").replaceAll("\\s+", " ");
  }

  private static String a(String type) {
    String bare = type.strip().replaceFirst("<.*", "");
    String simple = bare.substring(bare.lastIndexOf('.') + 1);
    return switch (simple) {
      case "int", "Integer" -> "a whole number";
      case "ArrayList" -> "a list";
      case "LinkedHashMap" -> "a map";
      case "boolean" -> "true or false";
      case "double" -> "a bare number";
      case "void", "Void" -> "nothing";
      default -> ScriptTypes.named(simple).map(TypeWords::a).orElse("a value of unknown type");
    };
  }
}
