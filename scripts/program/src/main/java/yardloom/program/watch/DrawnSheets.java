package yardloom.program.watch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.svg.SvgWriter;

/** The sheets of a watched plan as the page gets them: only those that it does not have yet. */
final class DrawnSheets {
  private Map<String, Drawn> drawn = new LinkedHashMap<>();

  /** A sheet and the version of the picture in which it was first as it is. */
  private record Drawn(ComposedSheet sheet, String svg, long since) {}

  /** The sheets of the picture {@code version}; the very same ones are not written again. */
  void become(List<ComposedSheet> sheets, long version) {
    Map<String, Drawn> next = new LinkedHashMap<>();
    for (ComposedSheet sheet : sheets) {
      Drawn before = drawn.get(sheet.id());
      next.put(
          sheet.id(),
          before != null && before.sheet() == sheet
              ? before
              : new Drawn(sheet, SvgWriter.element(sheet), version));
    }
    drawn = next;
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
