package yardloom.sheet.compose;

import java.util.List;
import java.util.function.Function;
import yardloom.kernel.recall.LastTime;

/**
 * Sheets of the last time, for a plan that is drawn again after each edit. A set composed with it
 * is the one composed without. Not thread-safe.
 */
public final class SheetMemory {
  private final LastTime<SheetRequest, List<SheetComposer.Filled>> pages = new LastTime<>();
  private final LastTime<Numbered, ComposedSheet> sheets = new LastTime<>();

  /** A page and its number in the set. */
  private record Numbered(SheetComposer.Filled page, int number, int count) {}

  /** Sets a page's title block. */
  interface Finisher {
    ComposedSheet finish(SheetComposer.Filled page, int number, int count);
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
