package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;

/**
 * Two views of one ground in the room of the drawing, each under its title: side by side, or one
 * over the other where the ground is wider than deep.
 */
final class BeforeAndAfter {
  private static final double TITLE_MM = 6;
  private static final double GAP_MM = 4;

  private final Panel.Before panel;
  private final Type type;

  private BeforeAndAfter(Panel.Before panel, Type type) {
    this.panel = panel;
    this.type = type;
  }

  /** Empty if the sheet has no view of before, or one that shows nothing. */
  static Optional<BeforeAndAfter> of(SheetRequest request, Type type) {
    return request.sheet().panels().stream()
        .filter(Panel.Before.class::isInstance)
        .map(Panel.Before.class::cast)
        .filter(p -> !SheetRequest.all(request.partLayers()).isEmpty())
        .findFirst()
        .map(p -> new BeforeAndAfter(p, type));
  }

  private static boolean isBeside(Envelope extent) {
    return extent.getWidth() <= extent.getHeight();
  }

  /** The width of both together, from that of one. */
  double widthMm(double oneMm, Envelope extent) {
    return isBeside(extent) ? 2 * oneMm + GAP_MM : oneMm;
  }

  /** The height of both together with their titles, from that of one. */
  double heightMm(double oneMm, Envelope extent) {
    return isBeside(extent) ? oneMm + TITLE_MM : 2 * (oneMm + TITLE_MM) + GAP_MM;
  }

  /** Where the earlier view is drawn. */
  Box before(Box area, Envelope extent) {
    return half(area, extent, 0);
  }

  /** Where the site plan itself is drawn. */
  Box after(Box area, Envelope extent) {
    return half(area, extent, 1);
  }

  private static Box half(Box area, Envelope extent, int which) {
    if (isBeside(extent)) {
      double width = (area.width() - GAP_MM) / 2;
      double x = area.x() + which * (width + GAP_MM);
      return new Box(x, area.y() + TITLE_MM, width, area.height() - TITLE_MM);
    }
    double height = (area.height() - GAP_MM) / 2 - TITLE_MM;
    double y = area.y() + TITLE_MM + which * (height + TITLE_MM + GAP_MM);
    return new Box(area.x(), y, area.width(), height);
  }

  /** The two titles, each over its view. */
  List<Ink> titles(Box before, Box after) {
    List<Ink> inks = new ArrayList<>();
    inks.addAll(title(panel.title(), before));
    inks.addAll(title(panel.titleAfter(), after));
    return inks;
  }

  private List<Ink> title(String text, Box view) {
    List<String> lines = type.wrap(text, Type.HEADING, true, view.width());
    return Type.lines(
        lines.subList(0, 1), view.x(), view.y() - TITLE_MM, Type.HEADING, true, Palette.INK);
  }
}
