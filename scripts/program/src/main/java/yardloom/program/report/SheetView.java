package yardloom.program.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.svg.SvgSheet;
import yardloom.sheet.svg.SvgWriter;

/**
 * A sheet as a figure.
 *
 * @param id of the fold that holds it, unique in the page
 * @param svg the drawing as an element
 * @param aspect width over height of what is shown, for the room it takes before it is drawn
 */
record SheetView(String id, String name, String caption, String svg, String aspect) {
  private static final double AROUND = 0.25;

  /** The whole sheet. */
  static SheetView of(SvgSheet drawn) {
    ComposedSheet sheet = drawn.sheet();
    String name = "Sheet " + sheet.number() + ": " + sheet.title();
    String scale =
        sheet.scale().isEmpty()
            ? ""
            : " Scale "
                + sheet.scale()
                + " when printed from the PDF or SVG file on "
                + sheet.paper().name()
                + "; here the graphic scale counts.";
    return new SheetView(
        "s-" + sheet.number(),
        name,
        name + "." + scale,
        drawn.element(),
        ratio(sheet.paper().widthMm(), sheet.paper().heightMm()));
  }

  /**
   * The picture of the yard that the sheet holds, without the words around it; the whole sheet if
   * it holds none. Its ids are its own, so that the sheet itself may follow in the page.
   *
   * @param lot what has to be seen of the surroundings no more than a little
   */
  static SheetView picture(ComposedSheet sheet, Optional<Envelope> lot) {
    Optional<Box> window =
        window(sheet.inks()).map(box -> lot.map(l -> around(l, sheet, box)).orElse(box));
    ComposedSheet cover =
        new ComposedSheet(
            "cover-picture",
            sheet.number(),
            sheet.title(),
            sheet.description(),
            sheet.paper(),
            sheet.drawnAt(),
            sheet.inks());
    String svg = SvgWriter.element(cover);
    Box box = window.orElse(new Box(0, 0, sheet.paper().widthMm(), sheet.paper().heightMm()));
    return new SheetView(
        "cover-figure",
        sheet.title(),
        sheet.title() + ".",
        shown(svg, box),
        ratio(box.width(), box.height()));
  }

  /** Drawings have their ground in the middle, and a tenth of it around at most. */
  private static Box around(Envelope lot, ComposedSheet sheet, Box window) {
    double mmPerM = sheet.drawnAt().map(s -> s.paperMm(1)).orElse(0.0);
    double around = Math.max(lot.getWidth(), lot.getHeight()) * AROUND;
    double width = Math.min(window.width(), (lot.getWidth() + around) * mmPerM);
    double height = Math.min(window.height(), (lot.getHeight() + around) * mmPerM);
    return mmPerM == 0 ? window : Box.around(window.centre(), width, height);
  }

  /** The same drawing with only {@code box} in view. */
  static String shown(String svg, Box box) {
    String view =
        String.format(
            Locale.ROOT,
            "viewBox=\"%.2f %.2f %.2f %.2f\"",
            box.x(),
            box.y(),
            box.width(),
            box.height());
    return svg.replaceFirst("viewBox=\"[^\"]*\"", view);
  }

  private static String ratio(double width, double height) {
    return String.format(Locale.ROOT, "%.3f", width / height);
  }

  private static Optional<Box> window(List<Ink> inks) {
    for (Ink ink : inks) {
      if (ink instanceof Ink.Group group) {
        Optional<Box> found = group.clip().or(() -> window(group.inks()));
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }
}
