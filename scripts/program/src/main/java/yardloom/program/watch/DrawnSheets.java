package yardloom.program.watch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import yardloom.kernel.hands.Hands;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.svg.ArcMemory;
import yardloom.sheet.svg.SvgWriter;

/** The sheets of a watched plan as the page gets them: only those that it does not have yet. */
final class DrawnSheets {
  private final ArcMemory arcs = new ArcMemory();
  private Map<String, Drawn> drawn = new LinkedHashMap<>();

  /** A sheet and the version of the picture in which it was first as it is. */
  private record Drawn(ComposedSheet sheet, String svg, long since) {}

  /** The sheets of the picture {@code version}, all of them. */
  void become(Some all, long version) {
    Map<String, Drawn> next = new LinkedHashMap<>();
    for (Written one : all.sheets()) {
      Drawn before = drawn.get(one.sheet().id());
      boolean same = before != null && before.svg().equals(one.svg());
      next.put(
          one.sheet().id(), new Drawn(one.sheet(), one.svg(), same ? before.since() : version));
    }
    drawn = next;
    arcs.next();
  }

  /** A sheet and its text. */
  private record Written(ComposedSheet sheet, String svg) {}

  /** Some sheets and their text. */
  record Some(List<Written> sheets) {}

  /** Writes those that are not the very ones that are drawn. */
  Some written(List<ComposedSheet> sheets, Hands hands) {
    return new Some(
        hands.all(sheets.stream().<Supplier<Written>>map(s -> () -> written(s)).toList()));
  }

  private Written written(ComposedSheet sheet) {
    Drawn before = drawn.get(sheet.id());
    boolean same = before != null && before.sheet() == sheet;
    return new Written(sheet, same ? before.svg() : SvgWriter.element(sheet, arcs));
  }

  /** Sets some sheets that are shown as the picture {@code version} has them; whether any is. */
  boolean put(Some some, long version) {
    boolean any = false;
    for (Written one : some.sheets()) {
      ComposedSheet sheet = one.sheet();
      Drawn before = drawn.get(sheet.id());
      if (before != null && !before.svg().equals(one.svg())) {
        drawn.put(sheet.id(), new Drawn(sheet, one.svg(), version));
        any = true;
      }
    }
    return any;
  }

  /** Adds all sheets to {@code all}, drawings only of those that changed after {@code seen}. */
  void addTo(ArrayNode all, long seen) {
    for (Drawn one : drawn.values()) {
      ComposedSheet sheet = one.sheet();
      ObjectNode node = all.addObject();
      node.put("id", sheet.id()).put("title", sheet.number() + " " + sheet.title());
      node.put("mmPerM", sheet.drawnAt().map(s -> s.paperMm(1)).orElse(0.0));
      if (one.since() > seen) {
        node.put("svg", one.svg());
      }
    }
  }
}
