package yardloom.program.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.plan.Lot;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Site;
import yardloom.kernel.study.DrawnLayer;
import yardloom.kernel.study.FindingMarks;
import yardloom.kernel.study.Outcome;
import yardloom.kernel.unit.Angle;
import yardloom.program.report.FindingsView.Detail;
import yardloom.program.report.FindingsView.Frame;
import yardloom.sheet.compose.ComposedSheet;
import yardloom.sheet.compose.Drawing;
import yardloom.sheet.compose.PaperWords;
import yardloom.sheet.compose.ScaleBar;
import yardloom.sheet.compose.ViewTitle;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Paper;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;
import yardloom.sheet.svg.SvgWriter;

/**
 * One map with every layer of the plan, each of which can be switched on and off. The yard is drawn
 * first and always; every other layer has its own labels, which go with it.
 *
 * @param switches the layers besides the yard, in drawing order
 */
record LayerMap(String svg, String aspect, List<Switch> switches, View view) {
  private static final String PREFIX = "map";
  private static final String YARD = "yard";
  private static final String MARKED = "findings";

  /** Millimetres; on a telephone a millimetre is some two and a half dots then. */
  private static final double WIDTH = 150;

  private static final double HIGHEST = 300;
  private static final double MARGIN = 6;
  private static final double FOOT = 18;
  private static final double LEAST_DETAIL = 36;

  /**
   * A layer to switch.
   *
   * @param target the id of its group in the drawing
   * @param on whether it is shown at first
   */
  record Switch(String id, String title, String target, boolean on) {}

  /** The map of a plan; none where nothing is drawn. */
  static Optional<LayerMap> of(Outcome outcome, PaperWords words) {
    SortedMap<Layer, DrawnLayer> layers = new TreeMap<>(outcome.layers());
    List<Mark> found = FindingMarks.of(outcome.findings());
    if (!found.isEmpty()) {
      layers.put(FindingMarks.LAYER, new DrawnLayer(found, List.of(), true, false));
    }
    Plan plan = outcome.plan();
    Optional<Envelope> lot = plan.lot().map(Lot::shape).map(Shape::bounds);
    List<Mark> all = layers.values().stream().flatMap(d -> d.marks().stream()).toList();
    Envelope extent = View.extent(all, lot);
    if (extent.isNull() || extent.getWidth() <= 0 || extent.getHeight() <= 0) {
      return Optional.empty();
    }
    double room = WIDTH - 2 * MARGIN;
    double mmPerM = Math.min(room / extent.getWidth(), HIGHEST / extent.getHeight());
    Box area = new Box(0, 0, WIDTH, extent.getHeight() * mmPerM + 2 * MARGIN);
    View view = View.centred(extent, mmPerM, area);
    List<Ink> inks = new ArrayList<>();
    inks.add(group(YARD, "Yard", yard(layers), view, area, words));
    List<Switch> switches = new ArrayList<>();
    subjects(layers)
        .forEach(
            (title, drawn) -> {
              boolean finding = drawn.containsKey(FindingMarks.LAYER);
              String id = finding ? MARKED : "l-" + (switches.size() + 1);
              inks.add(group(id, title, drawn, view, area, words));
              switches.add(new Switch("switch-" + id, words.of(title), PREFIX + "-" + id, finding));
            });
    inks.addAll(foot(plan, mmPerM, area));
    Paper paper = new Paper("screen", WIDTH, area.height() + FOOT);
    String name = "Map of all layers";
    ComposedSheet sheet =
        new ComposedSheet(
            PREFIX,
            0,
            name,
            "The yard from above with the layers that are switched on.",
            paper,
            Optional.empty(),
            inks);
    String aspect = String.format(Locale.ROOT, "%.3f", WIDTH / paper.heightMm());
    return Optional.of(new LayerMap(SvgWriter.element(sheet), aspect, switches, view));
  }

  private static SortedMap<Layer, List<Mark>> yard(SortedMap<Layer, DrawnLayer> layers) {
    SortedMap<Layer, List<Mark>> yard = new TreeMap<>();
    layers.forEach(
        (layer, drawn) -> {
          if (drawn.yard()) {
            yard.put(layer, drawn.marks());
          }
        });
    return yard;
  }

  /** Layers to switch; those of one subject, such as {@code Picture: trees}, go together. */
  private static Map<String, SortedMap<Layer, List<Mark>>> subjects(
      SortedMap<Layer, DrawnLayer> layers) {
    Map<String, SortedMap<Layer, List<Mark>>> subjects = new LinkedHashMap<>();
    layers.forEach(
        (layer, drawn) -> {
          if (!drawn.yard() && !drawn.marks().isEmpty()) {
            String subject = layer.title().replaceFirst(": .*", "");
            subjects.computeIfAbsent(subject, t -> new TreeMap<>()).put(layer, drawn.marks());
          }
        });
    return subjects;
  }

  private static Ink group(
      String id,
      String title,
      SortedMap<Layer, List<Mark>> layers,
      View view,
      Box area,
      PaperWords words) {
    SortedMap<Layer, List<Mark>> said = new TreeMap<>();
    layers.forEach((layer, marks) -> said.put(layer, words.marks(marks)));
    Drawing drawing = new Drawing(said, view, area, Type.ofPages(FontWidths.shipped()));
    return Ink.Group.of(id, words.of(title), drawing.inks());
  }

  private static List<Ink> foot(Plan plan, double mmPerM, Box area) {
    double north = plan.site().map(Site::north).orElse(Angle.ZERO).degrees();
    List<Ink> inks = new ArrayList<>();
    inks.add(ViewTitle.north(new Xy(12, area.bottom() + FOOT / 2), north));
    Scale scale = Scale.metric(1000 / mmPerM);
    ScaleBar bar = new ScaleBar(scale, plan.info().units(), WIDTH - 50);
    inks.addAll(bar.at(30, area.bottom() + 5));
    return inks;
  }

  /** The surroundings of some ground, with a frame around it. */
  Detail detail(Shape ground, String label) {
    Envelope bounds = ground.bounds();
    Xy from = view.toPaper(new Coordinate(bounds.getMinX(), bounds.getMaxY()));
    double width = bounds.getWidth() * view.mmPerM();
    double height = bounds.getHeight() * view.mmPerM();
    double side = Math.max(LEAST_DETAIL, Math.max(width, height) * 1.5);
    double left = from.x() + width / 2 - side / 2;
    double top = from.y() + height / 2 - side / 2;
    String box = number(left) + " " + number(top) + " " + number(side) + " " + number(side);
    Frame frame =
        new Frame(
            number(from.x() - 1), number(from.y() - 1), number(width + 2), number(height + 2));
    List<String> shown = new ArrayList<>(List.of("#" + PREFIX + "-" + YARD));
    switches.stream().filter(Switch::on).forEach(s -> shown.add("#" + s.target()));
    return new Detail(label, shown, box, frame);
  }

  private static String number(double mm) {
    return String.format(Locale.ROOT, "%.1f", mm);
  }
}
