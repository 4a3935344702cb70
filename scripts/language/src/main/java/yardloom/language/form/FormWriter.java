package yardloom.language.form;

import java.nio.file.Path;
import java.util.List;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Rings;
import yardloom.kernel.problem.SourceRef;

/** Writes a plan in its JSON form, one step a line; {@link FormReader} reads it back. */
public final class FormWriter {
  private final StringBuilder out = new StringBuilder();
  private final Path folder;

  private FormWriter(Path folder) {
    this.folder = folder;
  }

  /** The text of a plan. */
  public static String write(List<Step> steps) {
    return write(steps, null);
  }

  /**
   * The text of a plan in which each step says where in the script it came from.
   *
   * @param folder where the script lies; files are named as seen from there
   */
  public static String write(List<Step> steps, Path folder) {
    FormWriter writer = new FormWriter(folder);
    writer.out.append("{\n  \"form\": ");
    writer.text(FormReader.FORM);
    writer.out.append(",\n  \"plan\": ");
    writer.block(steps, 1);
    writer.out.append("\n}\n");
    return writer.out.toString();
  }

  /** The steps alone, as they stand in a block, without places. */
  public static String steps(List<Step> steps) {
    FormWriter writer = new FormWriter(null);
    writer.block(steps, 0);
    return writer.out.toString();
  }

  private void block(List<Step> steps, int depth) {
    if (steps.isEmpty()) {
      out.append("[]");
      return;
    }
    String comma = "[\n";
    for (Step step : steps) {
      out.append(comma).append("  ".repeat(depth + 1));
      step(step, depth + 1);
      comma = ",\n";
    }
    out.append('\n').append("  ".repeat(depth)).append(']');
  }

  private void step(Step step, int depth) {
    if (step instanceof Step.Call call) {
      call(call, depth, true);
    } else if (step instanceof Step.Include include) {
      out.append("{\"word\": \"include\", \"with\": {\"file\": ");
      text(include.file());
      out.append("}");
      place(include);
      out.append(", \"block\": ");
      block(include.block(), depth);
      out.append('}');
    } else if (step instanceof Step.Param param) {
      out.append("{\"word\": \"param\", \"with\": {\"name\": ");
      text(param.name());
      out.append(", \"value\": ");
      value(param.value(), true, depth);
      out.append(", \"help\": ");
      text(param.help());
      out.append(param.fixed() ? ", \"fixed\": true}" : "}");
      place(param);
      out.append('}');
    }
  }

  private void call(Step.Call call, int depth, boolean withPlace) {
    out.append("{\"word\": ");
    text(call.word().name());
    String comma = ", \"with\": {";
    for (int i = 0; i < call.values().size(); i++) {
      if (call.values().get(i).isPresent()) {
        out.append(comma);
        text(call.word().parameters().get(i).name());
        out.append(": ");
        Class<?> type = call.word().parameters().get(i).type();
        value(call.values().get(i).get(), type == Object.class, depth);
        comma = ", ";
      }
    }
    out.append(comma.equals(", ") ? "}" : "");
    if (call.name() != null) {
      out.append(", \"as\": ");
      text(call.name());
    }
    if (withPlace) {
      place(call);
    }
    if (call.blocks().size() == 1) {
      out.append(", \"block\": ");
      block(call.blocks().get(0), depth);
    } else if (!call.blocks().isEmpty()) {
      comma = ", \"blocks\": [";
      for (List<Step> each : call.blocks()) {
        out.append(comma);
        block(each, depth);
        comma = ", ";
      }
      out.append(']');
    }
    out.append('}');
  }

  private void place(Step step) {
    if (folder != null) {
      SourceRef place = step.place();
      Path file = Path.of(place.file());
      String shown = (file.startsWith(folder) ? folder.relativize(file) : file).toString();
      out.append(", \"place\": ");
      String caller = place.calledFrom() == 0 ? "" : " from " + place.calledFrom();
      text(shown.replace('\\', '/') + ":" + place.line() + ":" + place.column() + caller);
    }
  }

  /**
   * @param free whether nothing but the text itself says what it is
   */
  private void value(Value value, boolean free, int depth) {
    if (value instanceof Value.Plain plain) {
      plain(plain.value(), free);
    } else if (value instanceof Value.Measure measure) {
      text(measure.text());
    } else if (value instanceof Value.At at) {
      out.append(free ? "{\"point\": " : "");
      point(at);
      out.append(free ? "}" : "");
    } else if (value instanceof Value.Along along) {
      out.append(free ? "{\"line\": " : "");
      String comma = "[";
      for (Point p : along.line().points()) {
        out.append(comma);
        point(new Value.At(Exact.of(p.x()), Exact.of(p.y())));
        comma = ", ";
      }
      out.append(free ? "]}" : "]");
    } else if (value instanceof Value.Ground ground) {
      out.append("{\"ground\": ").append(rings(ground)).append('}');
    } else if (value instanceof Value.Items items) {
      String comma = "";
      out.append('[');
      for (Value each : items.values()) {
        out.append(comma);
        // Lists of one type read either form, lists of anything need the explicit one.
        value(each, true, depth);
        comma = ", ";
      }
      out.append(']');
    } else if (value instanceof Value.Ref ref) {
      out.append("{\"ref\": ");
      text(ref.name());
      out.append(ref.part() == 0 ? "" : ", \"part\": " + ref.part()).append('}');
    } else if (value instanceof Value.Given given) {
      out.append("{\"param\": ");
      text(given.name());
      out.append('}');
    } else if (value instanceof Step.Call call) {
      call(call, depth, false);
    }
  }

  private void point(Value.At at) {
    out.append('[');
    text(at.x().text());
    out.append(", ");
    text(at.y().text());
    out.append(']');
  }

  private void plain(Object value, boolean free) {
    if (value instanceof String s) {
      boolean wrapped = free && yardloom.language.value.ParamText.quantity(s).isPresent();
      out.append(wrapped ? "{\"text\": " : "");
      text(s);
      out.append(wrapped ? "}" : "");
    } else if (value instanceof Number n) {
      out.append(number(n));
    } else {
      out.append(value);
    }
  }

  private static String number(Number n) {
    boolean whole = n instanceof Integer || n instanceof Long;
    return whole ? n.toString() : Double.toString(n.doubleValue());
  }

  private static String rings(Value.Ground ground) {
    StringBuilder made = new StringBuilder("[");
    String comma = "";
    for (List<List<Point>> polygon : Rings.of(ground.shape())) {
      made.append(comma).append('[');
      String inner = "";
      for (List<Point> ring : polygon) {
        made.append(inner).append('[');
        String next = "";
        for (Point p : ring) {
          made.append(next).append('[').append(p.x().metres()).append(", ");
          made.append(p.y().metres()).append(']');
          next = ", ";
        }
        made.append(']');
        inner = ", ";
      }
      made.append(']');
      comma = ", ";
    }
    return made.append(']').toString();
  }

  private void text(String value) {
    JsonOut.quote(out, value);
  }
}
