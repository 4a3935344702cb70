package yardloom.program.words;

import java.util.Locale;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.vocab.Word;

/** What lists and pages say of a word. */
public final class Help {
  private Help() {}

  /** What fits in a line of a list. */
  public static String firstSentence(String help) {
    int end = help.indexOf(". ");
    return end < 0 ? help : help.substring(0, end + 1);
  }

  /** What a parameter is, with its choices if it has some. */
  public static String of(Word.Parameter parameter) {
    String choices =
        parameter.choices().isEmpty() ? "" : "; one of " + String.join(", ", parameter.choices());
    return parameter.help() + choices;
  }

  /** What kind of value a parameter takes, in plain words. */
  public static String type(Class<?> type) {
    return Quantity.class.isAssignableFrom(type) || type.getName().startsWith("yardloom.")
        ? type.getSimpleName().toLowerCase(Locale.ROOT)
        : switch (type.getSimpleName()) {
          case "String" -> "text";
          case "Boolean" -> "true/false";
          case "Object" -> "value";
          case "Number", "Integer", "Double" -> "number";
          default -> type.getSimpleName().toLowerCase(Locale.ROOT);
        };
  }
}
