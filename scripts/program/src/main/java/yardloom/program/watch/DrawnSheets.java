package yardloom.program.watch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    all.svgs()
        .forEach(
            (sheet, svg) -> {
              Drawn before = drawn.get(sheet.id());
              boolean same = before != null && before.svg().equals(svg);
              next.put(sheet.id(), new Drawn(sheet, svg, same ? before.since() : version));
            });
    drawn = next;
    arcs.next();
  }

  /** Some sheets and their text. */
  record Some(Map<ComposedSheet, String> svgs) {}

  /** Writes those that are not the very ones that are drawn. */
  Some written(List<ComposedSheet> sheets) {
    Map<ComposedSheet, String> svgs = new LinkedHashMap<>();
    for (ComposedSheet sheet : sheets) {
      Drawn before = drawn.get(sheet.id());
      boolean same = before != null && before.sheet() == sheet;
      svgs.put(sheet, same ? before.svg() : SvgWriter.element(sheet, arcs));
    }
    return new Some(svgs);
  }

  /** Sets some sheets that are shown as the picture {@code version} has them; whether any is. */
  boolean put(Some some, long version) {
    boolean any = false;
    for (Map.Entry<ComposedSheet, String> one : some.svgs().entrySet()) {
      ComposedSheet sheet = one.getKey();
      Drawn before = drawn.get(sheet.id());
      if (before != null && !before.svg().equals(one.getValue())) {
        drawn.put(sheet.id(), new Drawn(sheet, one.getValue(), version));
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
