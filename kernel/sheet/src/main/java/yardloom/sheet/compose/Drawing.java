package yardloom.sheet.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.sheet.label.DrawingLabels;
import yardloom.sheet.label.LabelSpace;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.BreakLine;
import yardloom.sheet.paper.DimensionInk;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Quad;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;

/**
 * Turns marks into ink: layers from the ground up, then dimensions, then labels in free places.
 *
 * <p>Labels that must be read but find no place are named in {@link Done}; the composer lists them
 * beside the drawing. Regions that run on beyond the drawing end in a {@link BreakLine}; thin rows
 * of pipe are broken under names ({@link LineBreaks}).
 */
public final class Drawing {
  /** A symbol of this radius has room for a name. */
  private static final double WIDE_MM = 6;

  private static final int EDGE_SIDES = 24;

  /** An outline of this width counts as so many lines more, for texts and not for leaders. */
  private static final double HEAVY_MM = 0.6;

  private static final int HEAVY_COUNTS = 4;

  private final View view;
  private final Box area;
  private final Type type;
  private final LabelSpace space;
  private final List<Ink> inks = new ArrayList<>();
  private final List<Ink> breaks = new ArrayList<>();

  /** Strokes, or what later filled regions leave of them. */
  private final List<Line> seen = new ArrayList<>();

  private final LinesLeft left;
  private final List<String> homeless;
  private final List<String> figures;

  /**
   * @param area nothing is drawn outside it
   */
  public Drawing(SortedMap<Layer, List<Mark>> layers, View view, Box area, Type type) {
    this(layers, view, area, type, new LinesLeft());
  }

  /** The same with what other drawings found out. */
  Drawing(SortedMap<Layer, List<Mark>> layers, View view, Box area, Type type, LinesLeft left) {
    this.left = left;
    this.view = view;
    this.area = area;
    this.type = type;
    this.space = new LabelSpace(area.inset(1));
    List<Ink> ground = new ArrayList<>();
    layers.forEach((layer, marks) -> ground.add(layer(layer, marks)));
    seen.forEach(this::avoid);
    DrawingLabels labels = new DrawingLabels(space, view, area, type);
    List<Ink> dimensions = new ArrayList<>();
    List<DimensionInk> measures = new ArrayList<>();
    for (List<Mark> marks : layers.values()) {
      for (Mark mark : marks) {
        if (mark instanceof Mark.Dimension dimension) {
          measures.add(measure(dimension, dimensions));
        } else if (mark instanceof Mark.Label label && !label.text().isBlank()) {
          labels.add(label);
        }
      }
    }
    measures.forEach(m -> figure(m, dimensions).ifPresent(labels::add));
    labels.place();
    List<Quad> names = labels.texts().stream().map(t -> t.room(type.metrics())).toList();
    List<Layer> order = List.copyOf(layers.keySet());
    for (int i = 0; i < ground.size(); i++) {
      if (order.get(i).band() == Layer.Band.WATER) {
        ground.set(i, LineBreaks.under(names, ground.get(i)));
      }
    }
    inks.add(new Ink.Group("drawing", "", Optional.of(area), ground));
    addGroup("break-lines", "", breaks);
    addGroup("dimensions", "Dimensions", dimensions);
    homeless = labels.homeless();
    figures = labels.figures();
    addGroup("leaders", "", labels.leaders());
    addGroup("labels", "Labels", labels.texts());
  }

  public List<Ink> inks() {
    return inks;
  }

  /**
   * What is kept of a drawing: not the lines and places that its names were found room by, which
   * take many times the memory of what is drawn.
   *
   * @param homeless labels that must be read but found no place
   * @param figures what figures mean that stand for names
   */
  record Done(List<Ink> inks, List<String> homeless, List<String> figures) {
    Done {
      inks = List.copyOf(inks);
      homeless = List.copyOf(homeless);
      figures = List.copyOf(figures);
    }
  }

  Done done() {
    return new Done(inks, homeless, figures);
  }

  private void addGroup(String name, String title, List<? extends Ink> members) {
    if (!members.isEmpty()) {
      inks.add(Ink.Group.of(name, title, List.copyOf(members)));
    }
  }

  private Ink layer(Layer layer, List<Mark> marks) {
    List<Ink> groups = new ArrayList<>();
    String last = null;
    List<Ink> run = new ArrayList<>();
    for (Mark mark : marks) {
      String about = about(mark);
      if (about == null) {
        continue;
      }
      if (last != null && !about.equals(last)) {
        groups.add(thing(last, run));
        run = new ArrayList<>();
      }
      last = about;
      run.addAll(ink(mark));
    }
    if (last != null) {
      groups.add(thing(last, run));
    }
    return Ink.Group.of("layer-" + slug(layer.id()), layer.title(), groups);
  }

  private static Ink thing(String about, List<Ink> run) {
    return Ink.Group.of(slug(about), about, run);
  }

  private static String about(Mark mark) {
    if (mark instanceof Mark.Region region) {
      return region.about();
    }
    if (mark instanceof Mark.Stroke stroke) {
      return stroke.about();
    }
    return mark instanceof Mark.Symbol symbol ? symbol.about() : null;
  }

  /** Lower case with hyphens. */
  static String slug(String text) {
    String slug = text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    return slug.replaceAll("^-|-$", "");
  }

  private List<Ink> ink(Mark mark) {
    if (mark instanceof Mark.Region region) {
      return region(region);
    }
    if (mark instanceof Mark.Stroke stroke) {
      List<Xy> points = track(stroke.line().jts());
      seen.add(stroke.line());
      return List.of(new Ink.Path(List.of(new Ink.Track(points, false)), stroke.style()));
    }
    Mark.Symbol symbol = (Mark.Symbol) mark;
    Xy at = view.toPaper(symbol.at());
    double radius = symbol.size().metres() * view.mmPerM() / 2;
    if (symbol.form().isTrueSize() && radius > WIDE_MM) {
      avoidEdge(at, radius);
    }
    double reach = symbol.form().isTrueSize() ? Math.min(radius, 3) : 1.5;
    space.avoidSymbol(at, reach);
    return Symbols.draw(symbol.form(), at, radius, symbol.turn().degrees(), symbol.style());
  }

  /** What lies under a fill is not seen, and no name has to give way to it. */
  private void cover(Shape filled) {
    List<Line> all = List.copyOf(seen);
    seen.clear();
    for (Line line : all) {
      boolean near = line.jts().getEnvelopeInternal().intersects(filled.bounds());
      seen.addAll(near ? left.of(line, filled) : List.of(line));
    }
  }

  private void avoid(Line stroke) {
    List<Xy> points = track(stroke.jts());
    for (int i = 1; i < points.size(); i++) {
      space.avoid(points.get(i - 1), points.get(i));
    }
  }

  /** Names stand within a wide crown or outside it, not over its edge. */
  private void avoidEdge(Xy at, double radius) {
    Xy last = at.plus(radius, 0);
    for (int i = 1; i <= EDGE_SIDES; i++) {
      double angle = 2 * Math.PI * i / EDGE_SIDES;
      Xy next = at.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
      space.avoidOutline(last, next);
      last = next;
    }
  }

  private List<Ink> region(Mark.Region region) {
    List<Ink.Track> tracks = new ArrayList<>();
    boolean outlined = !region.style().stroke().isEmpty();
    if (!region.style().fill().isEmpty()) {
      cover(region.shape());
    }
    for (Polygon polygon : region.shape().polygons()) {
      tracks.add(new Ink.Track(ring(polygon.getExteriorRing(), outlined), true));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        tracks.add(new Ink.Track(ring(polygon.getInteriorRingN(i), outlined), true));
      }
    }
    if (region.style().strokeMm() >= HEAVY_MM) {
      tracks.forEach(this::avoidHeavy);
    }
    // A tint without an edge has none that could break off.
    (outlined ? tracks : List.<Ink.Track>of())
        .forEach(track -> breaks.addAll(BreakLine.where(track.points(), area)));
    return tracks.isEmpty() ? List.of() : List.of(new Ink.Path(tracks, region.style()));
  }

  /** A line as heavy as that of the lot strikes a text through whatever its halo. */
  private void avoidHeavy(Ink.Track ring) {
    List<Xy> points = ring.points();
    for (int i = 0; i < points.size(); i++) {
      for (int n = 0; n < HEAVY_COUNTS; n++) {
        space.avoid(points.get(i), points.get((i + 1) % points.size()));
      }
    }
  }

  private List<Xy> ring(LineString ring, boolean outlined) {
    List<Xy> points = track(ring);
    for (int i = 1; i < points.size() && outlined; i++) {
      space.avoidOutline(points.get(i - 1), points.get(i));
    }
    return points.subList(0, points.size() - 1);
  }

  private List<Xy> track(LineString line) {
    return view.toPaper(line);
  }

  /** Draws the lines of a dimension, over which no text may stand. */
  private DimensionInk measure(Mark.Dimension dimension, List<Ink> out) {
    DimensionInk ink = new DimensionInk(dimension, view);
    out.addAll(ink.lines());
    space.avoidOutline(ink.lineFrom(), ink.lineTo());
    ink.tracks().forEach(t -> space.bar(t.points().get(0), t.points().get(1)));
    return ink;
  }

  /** Writes the figure of a dimension; it is returned if it has to be led to from elsewhere. */
  private Optional<Mark.Label> figure(DimensionInk ink, List<Ink> out) {
    for (Ink.Text text : ink.texts()) {
      Quad room = text.room(type.metrics());
      if (space.isFree(room) && space.isClearOfSymbols(room)) {
        space.take(room);
        out.add(text);
        return Optional.empty();
      }
    }
    return Optional.of(
        new Mark.Label(
            view.toPlan(ink.middle()), ink.text(), DimensionInk.TEXT_MM, false, 0, Anchor.NEAR));
  }
}
