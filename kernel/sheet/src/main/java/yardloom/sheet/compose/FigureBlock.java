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
import yardloom.kernel.unit.UnitSystem;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Scale;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;

/**
 * A figure with title and legend. It is drawn at its own true scale, or fills the width that it is
 * given up to nearly half the sheet's height, or what room is left if it may be as small; what is
 * too large for the sheet is drawn smaller and says so.
 */
final class FigureBlock implements Block {
  private static final double MARGIN_MM = 4;
  private static final double GAP_MM = 1.5;
  private static final double SHARE_OF_HEIGHT = 0.45;
  private static final Style TOP_RULE = Style.line("block-rule", Palette.INK, 0.5);
  private static final Layer LAYER = new Layer("figure", "Figure", Layer.Band.GROUND);

  private final Panel.Figure figure;
  private final Type type;
  private final Optional<Scale> scale;
  private final double maxWidthMm;
  private final double maxHeightMm;
  private final double usualDrawingMm;
  private final Envelope extent;

  /**
   * @param maxWidthMm all that a sheet offers
   * @param maxHeightMm all that a sheet offers
   */
  FigureBlock(
      Panel.Figure figure, Type type, UnitSystem units, double maxWidthMm, double maxHeightMm) {
    this(
        figure,
        type,
        Optional.of(figure.scaleDenominator()).filter(n -> n > 0).map(n -> Scale.of(n, units)),
        maxWidthMm,
        maxHeightMm,
        SHARE_OF_HEIGHT * maxHeightMm);
  }

  private FigureBlock(
      Panel.Figure figure,
      Type type,
      Optional<Scale> scale,
      double maxWidthMm,
      double maxHeightMm,
      double usualDrawingMm) {
    this.figure = figure;
    this.type = type;
    this.scale = scale;
    this.maxWidthMm = maxWidthMm;
    this.maxHeightMm = maxHeightMm;
    this.usualDrawingMm = usualDrawingMm;
    this.extent = View.extent(figure.marks(), Optional.empty());
  }

  /** The same figure with the drawing no higher than this, unless its least width asks for it. */
  FigureBlock drawnUpTo(double drawingMm) {
    return new FigureBlock(figure, type, scale, maxWidthMm, maxHeightMm, drawingMm);
  }

  /** What title and legend take of the height. */
  double aroundMm(double widthMm) {
    return layout(widthMm).aroundMm();
  }

  /** Millimetres for a metre of a drawing in this room, margins included. */
  double mmPerM(double widthMm, double drawingMm) {
    return fitting(widthMm - 2 * MARGIN_MM, drawingMm - 2 * MARGIN_MM);
  }

  @Override
  public double minWidthMm() {
    double drawn = scale.map(s -> s.paperMm(extent.getWidth()) + 2 * MARGIN_MM).orElse(0.0);
    return Math.min(Math.max(figure.minWidthMm(), drawn), maxWidthMm);
  }

  /** The parts of the figure one below the other, and their sizes. */
  private record Layout(
      List<String> title,
      double titleMm,
      List<Stack.Row> legend,
      double mmPerM,
      String scaleWords) {
    double titleHeight() {
      return 0.5 + title.size() * Type.pitch(titleMm) + GAP_MM;
    }

    double scaleHeight() {
      return scaleWords.isEmpty() ? 0 : Type.pitch(Type.BODY);
    }

    double aroundMm() {
      return titleHeight() + scaleHeight() + legendHeight();
    }

    Layout at(double otherMmPerM) {
      return new Layout(title, titleMm, legend, otherMmPerM, scaleWords);
    }

    double legendHeight() {
      return legend.isEmpty() ? 0 : GAP_MM + legend.stream().mapToDouble(Stack.Row::heightMm).sum();
    }
  }

  private Layout layout(double widthMm) {
    List<String> title = type.wrap(figure.title(), type.heading(), true, widthMm);
    List<Stack.Row> legend =
        figure.legend().isEmpty()
            ? List.of()
            : new Blocks(type).legendRows(Blocks.tidy(figure.legend()), widthMm);
    Layout around = new Layout(title, type.heading(), legend, 1, "?");
    double height = maxHeightMm - around.aroundMm();
    double most = fitting(widthMm - 2 * MARGIN_MM, height - 2 * MARGIN_MM);
    if (scale.isPresent()) {
      double asked = 1000 / scale.get().denominator();
      boolean fits = asked <= most * (1 + 1e-9);
      String words = fits ? "Scale " + scale.get().words() : "Not to scale";
      return new Layout(title, type.heading(), legend, fits ? asked : most, words);
    }
    double usual = fitting(Double.MAX_VALUE, usualDrawingMm - 2 * MARGIN_MM);
    return new Layout(
        title, type.heading(), legend, Math.min(most, Math.max(usual, leastMmPerM())), "");
  }

  /** The largest mm per metre at which the figure fits. */
  private double fitting(double widthMm, double heightMm) {
    double byWidth = extent.getWidth() == 0 ? Double.MAX_VALUE : widthMm / extent.getWidth();
    double byHeight = extent.getHeight() == 0 ? Double.MAX_VALUE : heightMm / extent.getHeight();
    double both = Math.min(byWidth, byHeight);
    return both == Double.MAX_VALUE ? 1 : both;
  }

  /** The same drawn lower, if it is too high for the room and may be drawn so small. */
  private Layout lowered(Layout layout, double heightMm) {
    double room = heightMm - layout.aroundMm() - 2 * MARGIN_MM;
    double fits = Math.min(layout.mmPerM(), fitting(Double.MAX_VALUE, room));
    return scale.isPresent() || fits < leastMmPerM() ? layout : layout.at(fits);
  }

  private double leastMmPerM() {
    return fitting(figure.minWidthMm() - 2 * MARGIN_MM, Double.MAX_VALUE);
  }

  @Override
  public Optional<Placed> place(Box room, boolean partly) {
    Layout layout = lowered(layout(room.width()), room.height());
    double drawing = extent.getHeight() * layout.mmPerM() + 2 * MARGIN_MM;
    double height = layout.aroundMm() + drawing;
    if (height > room.height() + 1e-9) {
      return Optional.empty();
    }
    List<Ink> inks = heading(room, layout);
    double y = room.y() + layout.titleHeight() + layout.scaleHeight();
    Box area = new Box(room.x(), y, room.width(), drawing);
    SortedMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(LAYER, figure.marks());
    View view = View.centred(extent, layout.mmPerM(), area);
    inks.addAll(new Drawing(layers, view, area, type).inks());
    y += drawing + GAP_MM;
    for (Stack.Row row : layout.legend()) {
      inks.addAll(row.drawn().at(room.x(), y));
      y += row.heightMm();
    }
    Ink group = Ink.Group.of("figure-" + Drawing.slug(figure.title()), figure.title(), inks);
    return Optional.of(new Placed(List.of(group), height, Optional.empty()));
  }

  private static List<Ink> heading(Box room, Layout layout) {
    List<Ink> inks = new ArrayList<>();
    inks.add(Ink.Path.line(TOP_RULE, new Xy(room.x(), room.y()), new Xy(room.right(), room.y())));
    double y = room.y() + 0.5;
    inks.addAll(Type.lines(layout.title(), room.x(), y, layout.titleMm(), true, Palette.INK));
    List<String> scaleLine =
        layout.scaleWords().isEmpty() ? List.of() : List.of(layout.scaleWords());
    inks.addAll(
        Type.lines(
            scaleLine, room.x(), room.y() + layout.titleHeight(), Type.BODY, false, Palette.MUTED));
    return inks;
  }
}
