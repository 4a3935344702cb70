package yardloom.language.form;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes maps, lists, texts, numbers and truths as JSON, short ones on one line. */
final class JsonOut {
  private static final int ONE_LINE = 100;

  private JsonOut() {}

  static String of(Object value) {
    StringBuilder out = new StringBuilder();
    write(out, value, 0);
    return out.append('\n').toString();
  }

  private static void write(StringBuilder out, Object value, int depth) {
    StringBuilder line = new StringBuilder();
    flat(line, value);
    if (line.length() + 2 * depth <= ONE_LINE) {
      out.append(line);
    } else if (value instanceof Map<?, ?> map) {
      String comma = "{\n";
      for (Map.Entry<?, ?> each : map.entrySet()) {
        out.append(comma).append("  ".repeat(depth + 1));
        quote(out, (String) each.getKey());
        out.append(": ");
        write(out, each.getValue(), depth + 1);
        comma = ",\n";
      }
      out.append('\n').append("  ".repeat(depth)).append('}');
    } else if (value instanceof List<?> list) {
      String comma = "[\n";
      for (Object each : list) {
        out.append(comma).append("  ".repeat(depth + 1));
        write(out, each, depth + 1);
        comma = ",\n";
      }
      out.append('\n').append("  ".repeat(depth)).append(']');
    } else {
      out.append(line);
    }
  }

  private static void flat(StringBuilder out, Object value) {
    if (value instanceof Map<?, ?> map) {
      String comma = "";
      out.append('{');
      for (Map.Entry<?, ?> each : map.entrySet()) {
        out.append(comma);
        quote(out, (String) each.getKey());
        out.append(": ");
        flat(out, each.getValue());
        comma = ", ";
      }
      out.append('}');
    } else if (value instanceof List<?> list) {
      String comma = "";
      out.append('[');
      for (Object each : list) {
        out.append(comma);
        flat(out, each);
        comma = ", ";
      }
      out.append(']');
    } else if (value instanceof String text) {
      quote(out, text);
    } else {
      out.append(value);
    }
  }

  static void quote(StringBuilder out, String value) {
    out.append('"');
    for (int i = 0; i < value.length(); i++) {
      char c = value.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (c < ' ' || c == '\u007f') {
            out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }
}
