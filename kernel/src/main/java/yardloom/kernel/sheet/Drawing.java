package yardloom.kernel.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;

/**
 * Turns marks into ink: layers from the ground up, then dimensions, then labels in free places.
 *
 * <p>Labels of rank 3 or less that find no place are named in {@link #homeless}; the composer lists
 * them beside the drawing.
 */
final class Drawing {
  private static final int ALWAYS_SHOWN = 3;
  private static final double ANCHOR_DOT_MM = 0.45;
  private static final Style LEADER = Style.line("leader", Palette.INK, 0.18);
  private static final Style LEADER_DOT = Style.filled("leader-dot", Palette.INK);

  private final View view;
  private final Box area;
  private final Type type;
  private final LabelPlacer placer;
  private final List<Ink> inks = new ArrayList<>();
  private final List<String> homeless = new ArrayList<>();

  /** A label or measure waiting for a place. */
  private record Waiting(
      Xy anchor,
      List<String> lines,
      double heightMm,
      boolean bold,
      int rank,
      boolean fixed,
      boolean orNone,
      boolean upright) {}

  /**
   * @param area nothing is drawn outside it
   */
  Drawing(SortedMap<Layer, List<Mark>> layers, View view, Box area, Type type) {
    this.view = view;
    this.area = area;
    this.type = type;
    this.placer = new LabelPlacer(area.inset(1));
    List<Ink> ground = new ArrayList<>();
    layers.forEach((layer, marks) -> ground.add(layer(layer, marks)));
    inks.add(new Ink.Group("drawing", "", Optional.of(area), ground));
    List<Waiting> waiting = new ArrayList<>();
    List<Ink> dimensions = new ArrayList<>();
    for (List<Mark> marks : layers.values()) {
      for (Mark mark : marks) {
        if (mark instanceof Mark.Dimension dimension) {
          dimension(dimension, dimensions).ifPresent(waiting::add);
        } else if (mark instanceof Mark.Label label && !label.text().isBlank()) {
          waiting.add(waiting(label));
        }
      }
    }
    addGroup("dimensions", "Dimensions", dimensions);
    labels(waiting);
  }

  List<Ink> inks() {
    return inks;
  }

  List<String> homeless() {
    return homeless;
  }

  private void addGroup(String name, String title, List<Ink> members) {
    if (!members.isEmpty()) {
      inks.add(Ink.Group.of(name, title, members));
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
      for (int i = 1; i < points.size(); i++) {
        placer.avoid(points.get(i - 1), points.get(i));
      }
      return List.of(new Ink.Path(List.of(new Ink.Track(points, false)), stroke.style()));
    }
    Mark.Symbol symbol = (Mark.Symbol) mark;
    Xy at = view.toPaper(symbol.at());
    double radius = symbol.size().metres() * view.mmPerM() / 2;
    double reach = symbol.form().isTrueSize() ? Math.min(radius, 3) : 1.5;
    placer.avoid(at.plus(-reach, -reach), at.plus(reach, reach));
    placer.avoid(at.plus(-reach, reach), at.plus(reach, -reach));
    return Symbols.draw(symbol.form(), at, radius, symbol.turn().degrees(), symbol.style());
  }

  private List<Ink> region(Mark.Region region) {
    List<Ink.Track> tracks = new ArrayList<>();
    boolean outlined = !region.style().stroke().isEmpty();
    for (Polygon polygon : region.shape().polygons()) {
      tracks.add(new Ink.Track(ring(polygon.getExteriorRing(), outlined), true));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        tracks.add(new Ink.Track(ring(polygon.getInteriorRingN(i), outlined), true));
      }
    }
    return tracks.isEmpty() ? List.of() : List.of(new Ink.Path(tracks, region.style()));
  }

  private List<Xy> ring(LineString ring, boolean outlined) {
    List<Xy> points = track(ring);
    for (int i = 1; i < points.size() && outlined; i++) {
      placer.avoidOutline(points.get(i - 1), points.get(i));
    }
    return points.subList(0, points.size() - 1);
  }

  private List<Xy> track(LineString line) {
    List<Xy> points = new ArrayList<>();
    for (Coordinate c : line.getCoordinates()) {
      points.add(view.toPaper(c));
    }
    return points;
  }

  /** Draws the dimension; its measure is returned if it has to be led to from elsewhere. */
  private Optional<Waiting> dimension(Mark.Dimension dimension, List<Ink> out) {
    DimensionInk ink = new DimensionInk(dimension, view);
    out.addAll(ink.lines());
    placer.avoid(ink.lineFrom(), ink.lineTo());
    for (Ink.Text text : ink.texts()) {
      Quad room = text.room(type.metrics());
      if (placer.isFree(room)) {
        placer.take(room);
        out.add(text);
        return Optional.empty();
      }
    }
    return Optional.of(
        new Waiting(
            ink.middle(),
            List.of(ink.text()),
            DimensionInk.TEXT_MM,
            false,
            0,
            false,
            false,
            false));
  }

  private Waiting waiting(Mark.Label label) {
    Xy at = area.inset(2).nearest(view.toPaper(label.at()));
    List<String> lines = List.of(label.text().strip().split("\n"));
    return new Waiting(
        at,
        lines,
        Math.max(Type.BODY, label.heightMm()),
        label.bold(),
        label.rank(),
        label.anchor() != Mark.Anchor.NEAR,
        label.anchor() == Mark.Anchor.FIXED,
        false);
  }

  private void labels(List<Waiting> asked) {
    List<Waiting> waiting = new ArrayList<>();
    List<LabelPlacer.Request> requests = new ArrayList<>();
    for (Waiting label : asked) {
      Waiting w = label.fixed() && !label.orNone() ? onFewestLines(label) : label;
      waiting.add(w);
      requests.add(
          new LabelPlacer.Request(
              w.anchor(), width(w), height(w), w.rank(), w.fixed(), w.orNone(), w.upright()));
    }
    List<Optional<LabelPlacer.Spot>> spots = placer.place(requests);
    List<Ink> leaders = new ArrayList<>();
    List<Ink> texts = new ArrayList<>();
    for (int i = 0; i < waiting.size(); i++) {
      Waiting w = waiting.get(i);
      if (spots.get(i).isPresent()) {
        set(w, spots.get(i).get(), leaders, texts);
      } else if (w.rank() <= ALWAYS_SHOWN) {
        homeless.add(String.join(" ", w.lines()));
      }
    }
    addGroup("leaders", "", leaders);
    addGroup("labels", "Labels", texts);
  }

  private double width(Waiting w) {
    double width = 0;
    for (String line : w.lines()) {
      width = Math.max(width, type.width(line, w.heightMm(), w.bold()));
    }
    return width;
  }

  private static double height(Waiting w) {
    return w.lines().size() * Type.pitch(w.heightMm());
  }

  /**
   * In a flat shape one long line is read better than two over its edges; in a tall one, upright.
   */
  private Waiting onFewestLines(Waiting w) {
    List<String> one = List.of(String.join(", ", w.lines()));
    return Stream.of(
            w, arranged(w, one, false), arranged(w, one, true), arranged(w, w.lines(), true))
        .min(Comparator.comparingLong(this::outlinesUnder))
        .orElseThrow();
  }

  private static Waiting arranged(Waiting w, List<String> lines, boolean upright) {
    return new Waiting(w.anchor(), lines, w.heightMm(), w.bold(), w.rank(), true, false, upright);
  }

  private long outlinesUnder(Waiting w) {
    double along = width(w);
    double across = height(w);
    return placer.outlinesUnder(
        Box.around(w.anchor(), w.upright() ? across : along, w.upright() ? along : across));
  }

  private static void set(Waiting w, LabelPlacer.Spot spot, List<Ink> leaders, List<Ink> texts) {
    spot.leaderTo()
        .ifPresent(
            to -> {
              leaders.add(Ink.Path.line(LEADER, w.anchor(), to));
              leaders.add(new Ink.Circle(w.anchor(), ANCHOR_DOT_MM, LEADER_DOT));
            });
    Xy middle = spot.box().centre();
    for (int k = 0; k < w.lines().size(); k++) {
      double down = k * Type.pitch(w.heightMm()) + Type.baseline(w.heightMm());
      Xy at =
          spot.upright()
              ? new Xy(spot.box().x() + down, middle.y())
              : new Xy(middle.x(), spot.box().y() + down);
      texts.add(
          new Ink.Text(
              at,
              w.lines().get(k),
              w.heightMm(),
              w.bold(),
              Ink.Align.MIDDLE,
              Palette.INK,
              true,
              spot.upright() ? -90 : 0));
    }
  }
}
