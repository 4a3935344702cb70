package yardloom.program.cli;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yardloom.kernel.problem.SourceRef;

/**
 * Everything that a value holds as text, records and collections taken apart; two plans of one text
 * are one plan, whatever is worked out from them.
 */
final class PlanText {
  private final boolean places;
  private final StringBuilder out = new StringBuilder();

  private PlanText(boolean places) {
    this.places = places;
  }

  /**
   * @param places whether where things were said belongs to it
   */
  static String of(Object value, boolean places) {
    PlanText text = new PlanText(places);
    try {
      text.write(value, 0);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
    return text.out.toString();
  }

  private void write(Object value, int depth) throws ReflectiveOperationException {
    if (depth > 40) {
      throw new AssertionError("too deep: " + value.getClass());
    }
    if (value == null || value instanceof Enum || value instanceof String) {
      out.append(value).append('\n');
    } else if (value instanceof SourceRef place) {
      out.append(places ? place.toString() : "").append('\n');
    } else if (value instanceof Optional<?> optional) {
      write(optional.orElse(null), depth + 1);
    } else if (value instanceof Collection<?> all) {
      out.append(all.size()).append(" of\n");
      for (Object each : all) {
        write(each, depth + 1);
      }
    } else if (value instanceof Map<?, ?> map) {
      for (Map.Entry<String, Object> each : sorted(map).entrySet()) {
        out.append(each.getKey()).append(" → ");
        write(each.getValue(), depth + 1);
      }
    } else if (value.getClass().isRecord()) {
      out.append(value.getClass().getSimpleName()).append('\n');
      for (RecordComponent part : value.getClass().getRecordComponents()) {
        out.append(part.getName()).append(": ");
        part.getAccessor().setAccessible(true);
        write(part.getAccessor().invoke(value), depth + 1);
      }
    } else {
      plain(value, depth);
    }
  }

  private void plain(Object value, int depth) throws ReflectiveOperationException {
    boolean tells = value.getClass().getMethod("toString").getDeclaringClass() != Object.class;
    out.append(tells ? value : value.getClass().getName()).append('\n');
    if (tells || !value.getClass().getName().startsWith("yardloom.")) {
      return;
    }
    for (Field field : value.getClass().getDeclaredFields()) {
      if (!Modifier.isStatic(field.getModifiers())) {
        field.setAccessible(true);
        out.append(field.getName()).append(": ");
        write(field.get(value), depth + 1);
      }
    }
  }

  private static Map<String, Object> sorted(Map<?, ?> map) {
    Map<String, Object> sorted = new TreeMap<>();
    map.forEach((k, v) -> sorted.put(String.valueOf(k), v));
    return sorted;
  }
}
