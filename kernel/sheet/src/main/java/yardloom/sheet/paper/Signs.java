package yardloom.sheet.paper;

import java.util.Map;

/** Writes signs that the shipped font lacks in signs that it has, so that all viewers show them. */
public final class Signs {
  private static final Map<Integer, String> WRITTEN =
      Map.of(
          0x2264, "<=", 0x2265, ">=", 0x2248, "~", 0x2260, "not", 0x2192, "->", 0x2190, "<-",
          0x2206, "\u0394", 0x221a, "root");

  private Signs() {}

  /** One line of {@code text}; control characters become spaces. */
  public static String shown(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (WRITTEN.containsKey(c)) {
                shown.append(WRITTEN.get(c));
              } else {
                shown.appendCodePoint(Character.isISOControl(c) ? ' ' : c);
              }
            });
    return shown.toString();
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < 0x20 || c >= 0x2190) {
        return false;
      }
    }
    return true;
  }
}
