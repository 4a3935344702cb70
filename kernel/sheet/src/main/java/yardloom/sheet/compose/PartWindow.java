package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.sheet.paper.View;

/**
 * What of a site plan is drawn again enlarged: on the plan itself that part is framed, and names
 * that stand on the enlarged one are left out.
 */
final class PartWindow {
  static final Style FRAME = Style.line("part-frame", Palette.MUTED, 0.35).dashed("4 2");

  private static final Layer LAYER = new Layer("part-frame", "Enlarged part", Layer.Band.NOTES);
  private static final double LETTERS_MM = 2;

  /** A part that is nearly the whole leaves the plan as it is. */
  private static final double MOST_OF_LOT = 0.8;

  /** Between the outermost points and the frame, in metres. */
  private static final double AROUND_M = 0.6;

  private PartWindow() {}

  /** The ground of the marks that are enlarged; empty if there are none. */
  static Optional<Envelope> of(SheetRequest request) {
    return part(request).map(p -> window(request, p)).filter(w -> !w.isNull());
  }

  private static Optional<Panel.Enlarged> part(SheetRequest request) {
    return request.sheet().panels().stream()
        .filter(Panel.Enlarged.class::isInstance)
        .map(Panel.Enlarged.class::cast)
        .findFirst();
  }

  private static Envelope window(SheetRequest request, Panel.Enlarged part) {
    if (part.window().isPresent()) {
      return part.window().get().bounds();
    }
    List<Mark> shown = new ArrayList<>();
    request
        .partLayers()
        .forEach(
            (layer, marks) -> {
              if (part.layers().contains(layer.id())) {
                shown.addAll(marks);
              }
            });
    return View.extent(shown, Optional.empty());
  }

  /** The part that is framed on the plan; empty if it is nearly all of it. */
  static Optional<Envelope> framed(SheetRequest request) {
    return of(request)
        .filter(
            w ->
                request
                    .lot()
                    .map(lot -> w.getArea() < MOST_OF_LOT * lot.bounds().getArea())
                    .orElse(true));
  }

  /** The layers of the site plan; as they are if no part of it is framed. */
  static SortedMap<Layer, List<Mark>> onPlan(SheetRequest request) {
    Optional<Envelope> window = framed(request);
    if (window.isEmpty()) {
      return request.layers();
    }
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    request
        .layers()
        .forEach(
            (layer, marks) ->
                layers.put(
                    layer,
                    request.partLayers().containsKey(layer)
                        ? marks.stream().filter(m -> !isNamedIn(m, window.get())).toList()
                        : marks));
    layers.put(LAYER, frame(window.get(), part(request).orElseThrow().title()));
    return layers;
  }

  private static boolean isNamedIn(Mark mark, Envelope window) {
    return mark instanceof Mark.Label label && window.contains(label.at().coordinate());
  }

  private static List<Mark> frame(Envelope window, String title) {
    Envelope box = new Envelope(window);
    box.expandBy(AROUND_M);
    Point[] corners = {
      Point.metres(box.getMinX(), box.getMinY()),
      Point.metres(box.getMaxX(), box.getMinY()),
      Point.metres(box.getMaxX(), box.getMaxY()),
      Point.metres(box.getMinX(), box.getMaxY())
    };
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < corners.length; i++) {
      Line side = Line.between(corners[i], corners[(i + 1) % corners.length]);
      marks.add(new Mark.Stroke(side, FRAME, "enlarged part"));
    }
    marks.add(
        new Mark.Label(
            Point.metres(box.centre().x, box.getMaxY()),
            "see: " + title,
            LETTERS_MM,
            false,
            2,
            Mark.Anchor.NEAR));
    return marks;
  }
}
