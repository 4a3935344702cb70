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
import yardloom.kernel.draw.Style;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;

/**
 * A part of the site at a true scale of its own: the largest usual one at which the window fits the
 * sheet. What lies further out is cut off.
 */
final class PartBlock implements Block {
  /** For numbers and names outside the outermost points. */
  private static final double MARGIN_MM = 8;

  private static final Style TOP_RULE = Style.line("block-rule", Palette.INK, 0.5);

  private final String title;
  private final SheetRequest request;
  private final Envelope window;
  private final Type type;
  private final double widthMm;
  private final Scale scale;

  /**
   * @param window in plan metres, not empty
   * @param widthMm all that a sheet offers
   * @param heightMm all that a sheet offers
   */
  PartBlock(
      String title,
      SheetRequest request,
      Envelope window,
      Type type,
      double widthMm,
      double heightMm) {
    this.title = title;
    this.request = request;
    this.window = window;
    this.type = type;
    this.widthMm = widthMm;
    double most = heightMm - ViewTitle.HEIGHT_MM - 2 * MARGIN_MM;
    List<Scale> usual = Scale.usual(request.info().units());
    this.scale =
        Scale.largestFitting(
                usual, window.getWidth(), window.getHeight(), widthMm - 2 * MARGIN_MM, most)
            .orElseGet(() -> usual.stream().max(Scale::compareTo).orElseThrow());
  }

  @Override
  public double minWidthMm() {
    return widthMm;
  }

  @Override
  public boolean floats() {
    return true;
  }

  /** The layers without names of what lies outside the part. */
  private SortedMap<Layer, List<Mark>> labelledInside(View view, Box area) {
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    request
        .partLayers()
        .forEach(
            (layer, marks) ->
                layers.put(
                    layer,
                    marks.stream()
                        .filter(
                            m ->
                                !(m instanceof Mark.Label label)
                                    || area.contains(view.toPaper(label.at())))
                        .toList()));
    return layers;
  }

  @Override
  public Optional<Placed> place(Box room, boolean partly) {
    double drawing = scale.paperMm(window.getHeight()) + 2 * MARGIN_MM;
    double height = drawing + ViewTitle.HEIGHT_MM;
    if (height > room.height() + 1e-9) {
      return Optional.empty();
    }
    Box area = new Box(room.x(), room.y(), room.width(), drawing);
    View view = View.centred(window, 1000 / scale.denominator(), area);
    SortedMap<Layer, List<Mark>> layers = labelledInside(view, area);
    List<Ink> inks = new ArrayList<>();
    inks.add(Ink.Path.line(TOP_RULE, new Xy(room.x(), room.y()), new Xy(room.right(), room.y())));
    inks.add(Ink.Group.of("site-plan", title, new Drawing(layers, view, area, type).inks()));
    Box strip = new Box(area.x(), area.bottom(), area.width(), ViewTitle.HEIGHT_MM);
    inks.addAll(
        ViewTitle.at(strip, title, scale, request.info().units(), request.north().degrees(), type));
    return Optional.of(new Placed(inks, height, Optional.empty()));
  }
}
