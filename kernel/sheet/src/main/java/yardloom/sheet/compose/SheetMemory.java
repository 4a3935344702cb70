package yardloom.sheet.compose;

import java.util.List;
import java.util.SortedMap;
import java.util.function.Function;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.recall.LastTime;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.View;

/**
 * Sheets of the last time, for a plan that is drawn again after each edit. A set composed with it
 * is the one composed without. For one set at a time, whose sheets may be filled at once.
 */
public final class SheetMemory {
  private final LastTime<SheetRequest, List<SheetComposer.Filled>> pages = new LastTime<>();
  private final LastTime<Numbered, ComposedSheet> sheets = new LastTime<>();

  private final LastTime<DrawingRequest, Drawing.Done> drawings = new LastTime<>();

  private final LinesLeft linesLeft = new LinesLeft();

  /** All that a drawing is made of. */
  record DrawingRequest(SortedMap<Layer, List<Mark>> layers, View view, Box area, boolean pocket) {}

  private List<SheetRequest> opens = List.of();
  private List<List<SheetComposer.Filled>> set = List.of();

  /** A page and its number in the set. */
  private record Numbered(SheetComposer.Filled page, int number, int count) {}

  /** Sets a page's title block. */
  interface Finisher {
    ComposedSheet finish(SheetComposer.Filled page, int number, int count);
  }

  /** A drawing; on one sheet it may be tried at several scales and beside several tables. */
  Drawing.Done drawing(
      String sheet, DrawingRequest request, Function<DrawingRequest, Drawing.Done> draw) {
    return drawings.of(sheet + " " + request.view().mmPerM() + " " + request.area(), request, draw);
  }

  LinesLeft linesLeft() {
    return linesLeft;
  }

  /** Keeps a whole set, its requests without optional tables that stand on earlier sheets. */
  void set(List<SheetRequest> requests, List<List<SheetComposer.Filled>> pages) {
    opens = List.copyOf(requests);
    set = List.copyOf(pages);
    linesLeft.next();
  }

  /** Where in the last set that sheet stands; -1 if it does not. */
  int inSet(String sheet) {
    return opens.stream().map(r -> r.sheet().id()).toList().indexOf(sheet);
  }

  SheetRequest open(int at) {
    return opens.get(at);
  }

  /** The pages of the last set by sheet. */
  List<List<SheetComposer.Filled>> pages() {
    return set;
  }

  List<SheetComposer.Filled> filled(
      SheetRequest request, Function<SheetRequest, List<SheetComposer.Filled>> fill) {
    return pages.of(request.sheet().id(), request, fill);
  }

  ComposedSheet finished(SheetComposer.Filled page, int number, int count, Finisher finisher) {
    String name = page.request().sheet().id() + " " + page.part();
    return sheets.of(
        name,
        new Numbered(page, number, count),
        n -> finisher.finish(n.page(), n.number(), n.count()));
  }
}
