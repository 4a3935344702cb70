package yardloom.kernel.sheet;

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
import yardloom.kernel.unit.UnitSystem;

/**
 * A figure with title and legend. It is drawn at its own true scale, or fills the width that it is
 * given; what is too large for the sheet is drawn smaller and says so.
 */
final class FigureBlock implements Block {
  private static final double MARGIN_MM = 4;
  private static final double GAP_MM = 1.5;
  private static final Style TOP_RULE = Style.line("block-rule", Palette.INK, 0.5);
  private static final Layer LAYER = new Layer("figure", "Figure", Layer.Band.GROUND);

  private final Panel.Figure figure;
  private final Type type;
  private final UnitSystem units;
  private final double maxWidthMm;
  private final double maxHeightMm;
  private final Envelope extent;

  /**
   * @param maxWidthMm all that a sheet offers
   * @param maxHeightMm all that a sheet offers
   */
  FigureBlock(
      Panel.Figure figure, Type type, UnitSystem units, double maxWidthMm, double maxHeightMm) {
    this.figure = figure;
    this.type = type;
    this.units = units;
    this.maxWidthMm = maxWidthMm;
    this.maxHeightMm = maxHeightMm;
    this.extent = View.extent(figure.marks(), Optional.empty());
  }

  @Override
  public double minWidthMm() {
    double asked = figure.minWidthMm();
    if (figure.scaleDenominator() > 0) {
      asked = Math.max(asked, trueScale().paperMm(extent.getWidth()) + 2 * MARGIN_MM);
    }
    return Math.min(asked, maxWidthMm);
  }

  private Scale trueScale() {
    return Scale.of(figure.scaleDenominator(), units);
  }

  @Override
  public Optional<Placed> place(Box room, boolean partly) {
    List<Stack.Row> legend = new Blocks(type).legendRows(figure.legend(), room.width());
    double legendHeight =
        figure.legend().isEmpty()
            ? 0
            : GAP_MM + legend.stream().mapToDouble(Stack.Row::heightMm).sum();
    List<String> title = type.wrap(figure.title(), Type.HEADING, true, room.width());
    double titleHeight = 0.5 + title.size() * Type.pitch(Type.HEADING) + GAP_MM;
    double most = maxHeightMm - titleHeight - legendHeight - Type.pitch(Type.BODY);
    double roomPerM = fitting(room.width() - 2 * MARGIN_MM, most - 2 * MARGIN_MM);
    boolean scaled = figure.scaleDenominator() > 0;
    boolean fits = scaled && 1000 / figure.scaleDenominator() <= roomPerM * (1 + 1e-9);
    double mmPerM = fits ? 1000 / figure.scaleDenominator() : roomPerM;
    String scaleWords = !scaled ? "" : fits ? "Scale " + trueScale().words() : "Not to scale";
    double scaleHeight = scaled ? Type.pitch(Type.BODY) : 0;
    double drawingHeight = extent.getHeight() * mmPerM + 2 * MARGIN_MM;
    double height = titleHeight + scaleHeight + drawingHeight + legendHeight;
    if (height > room.height() + 1e-9) {
      return Optional.empty();
    }
    List<Ink> inks = new ArrayList<>();
    inks.add(Ink.Path.line(TOP_RULE, new Xy(room.x(), room.y()), new Xy(room.right(), room.y())));
    inks.addAll(Type.lines(title, room.x(), room.y() + 0.5, Type.HEADING, true, Palette.INK));
    double y = room.y() + titleHeight;
    if (scaled) {
      inks.add(
          Type.line(scaleWords, room.x(), y, Type.BODY, false, Ink.Align.START, Palette.MUTED));
      y += scaleHeight;
    }
    Box area = new Box(room.x(), y, room.width(), drawingHeight);
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(LAYER, figure.marks());
    Drawing drawing = new Drawing(layers, View.centred(extent, mmPerM, area), area, type);
    inks.addAll(drawing.inks());
    y += drawingHeight + GAP_MM;
    for (Stack.Row row : legendHeight == 0 ? List.<Stack.Row>of() : legend) {
      inks.addAll(row.drawn().at(room.x(), y));
      y += row.heightMm();
    }
    String name = "figure-" + Drawing.slug(figure.title());
    return Optional.of(
        new Placed(List.of(Ink.Group.of(name, figure.title(), inks)), height, Optional.empty()));
  }

  /** The largest mm per metre at which the figure fits. */
  private double fitting(double widthMm, double heightMm) {
    double byWidth = extent.getWidth() == 0 ? Double.MAX_VALUE : widthMm / extent.getWidth();
    double byHeight = extent.getHeight() == 0 ? Double.MAX_VALUE : heightMm / extent.getHeight();
    double both = Math.min(byWidth, byHeight);
    return both == Double.MAX_VALUE ? 1 : both;
  }
}
