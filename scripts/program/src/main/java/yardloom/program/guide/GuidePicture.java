package yardloom.program.guide;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.study.Outcome;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.Drawing;
import yardloom.sheet.compose.PaperWords;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.svg.SvgWriter;

/** The yard of an example from above, as its sheets show it, without frame and title. */
public final class GuidePicture {
  /** Millimetres; a page of the guide is read on a screen beside its text. */
  private static final double WIDTH = 130;

  private static final double HIGHEST = 130;
  private static final double MARGIN = 5;

  private GuidePicture() {}

  /** The picture as a document of its own; none where nothing is drawn. */
  public static Optional<String> of(Outcome outcome) {
    Plan plan = outcome.plan();
    PaperWords words =
        new PaperWords(
            plan.info().units(), plan.elements().stream().map(e -> e.id().name()).toList());
    SortedMap<Layer, List<Mark>> shown = new TreeMap<>();
    outcome
        .layers()
        .forEach(
            (layer, drawn) -> {
              if (drawn.yard() || drawn.shown()) {
                shown.put(layer, words.marks(drawn.marks()));
              }
            });
    Optional<Envelope> lot = plan.lot().map(Lot::shape).map(Shape::bounds);
    Envelope extent = View.extent(shown.values().stream().flatMap(List::stream).toList(), lot);
    if (extent.isNull() || extent.getWidth() <= 0 || extent.getHeight() <= 0) {
      return Optional.empty();
    }
    double mmPerM =
        Math.min(
            (WIDTH - 2 * MARGIN) / extent.getWidth(), (HIGHEST - 2 * MARGIN) / extent.getHeight());
    Box area = new Box(0, 0, WIDTH, extent.getHeight() * mmPerM + 2 * MARGIN);
    View view = View.centred(extent, mmPerM, area);
    Drawing drawing = new Drawing(shown, view, area, Type.ofPages(FontWidths.shipped()));
    Ink all = Ink.Group.of("yard", "Yard", drawing.inks());
    ComposedSheet sheet =
        new ComposedSheet(
            "example",
            0,
            "Example",
            "The yard of the example from above.",
            new Paper("screen", WIDTH, area.height()),
            Optional.empty(),
            List.of(all));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(sheet, out);
    return Optional.of(out.toString(StandardCharsets.UTF_8));
  }
}
