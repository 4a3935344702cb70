package yardloom.sheet.label;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Polygon;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Mark.Anchor;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Shape;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;

/** The labels of one drawing: gathered first, then set where {@link LabelPlacer} finds room. */
public final class DrawingLabels {
  private static final int ALWAYS_SHOWN = 3;
  private static final double ANCHOR_DOT_MM = 0.45;
  private static final Style LEADER = Style.line("leader", Palette.INK, 0.18);
  private static final Style LEADER_DOT = Style.filled("leader-dot", Palette.INK);

  /**
   * A label waiting for a place.
   *
   * @param callout whether it says what several painters say of one ground, and so is kept whole
   */
  private record Waiting(
      Xy anchor,
      List<String> lines,
      double heightMm,
      boolean bold,
      int rank,
      Anchor stand,
      boolean upright,
      Optional<Footprint> ground,
      boolean callout) {

    Waiting arranged(List<String> otherLines, boolean isUpright) {
      return new Waiting(
          anchor, otherLines, heightMm, bold, rank, stand, isUpright, ground, callout);
    }

    /** One text for both; what ranks first is said first. */
    Waiting with(Waiting other) {
      Waiting first = other.rank < rank ? other : this;
      Waiting second = first == this ? other : this;
      return new Waiting(
          first.anchor,
          Stream.concat(first.lines.stream(), second.lines.stream()).toList(),
          first.heightMm,
          first.bold,
          first.rank,
          first.stand,
          false,
          ground,
          true);
    }
  }

  private final LabelSpace space;
  private final View view;
  private final Box area;
  private final Type type;
  private final List<Waiting> waiting = new ArrayList<>();
  private final Map<Object, Integer> bySubject = new HashMap<>();
  private final List<Ink> leaders = new ArrayList<>();
  private final List<Ink> texts = new ArrayList<>();

  public DrawingLabels(LabelSpace space, View view, Box area, Type type) {
    this.space = space;
    this.view = view;
    this.area = area;
    this.type = type;
  }

  public List<Ink> leaders() {
    return leaders;
  }

  public List<Ink> texts() {
    return texts;
  }

  /** Adds a label; what several painters say of one ground or point becomes one text. */
  public void add(Mark.Label label) {
    Waiting added = waitingFor(label);
    Optional<Object> subject = subject(label);
    Integer same = subject.map(bySubject::get).orElse(null);
    if (same == null) {
      subject.ifPresent(s -> bySubject.put(s, waiting.size()));
      waiting.add(added);
    } else {
      waiting.set(same, waiting.get(same).with(added));
    }
  }

  /** What a label is about; figures at a point, such as the number of a stake, stand alone. */
  private static Optional<Object> subject(Mark.Label label) {
    if (label.ground().isPresent()) {
      return Optional.of(label.ground().get());
    }
    return label.anchor() == Anchor.NEAR ? Optional.of(label.at()) : Optional.empty();
  }

  private Waiting waitingFor(Mark.Label label) {
    return new Waiting(
        area.inset(2).nearest(view.toPaper(label.at())),
        List.of(label.text().strip().split("\n")),
        Math.max(type.body(), label.heightMm()),
        label.bold(),
        label.rank(),
        label.anchor(),
        false,
        label.ground().flatMap(this::footprint),
        false);
  }

  /** The largest piece of a shape, without its holes. */
  private Optional<Footprint> footprint(Shape shape) {
    return shape.polygons().stream()
        .max(Comparator.comparingDouble(Polygon::getArea))
        .map(p -> view.toPaper(p.getExteriorRing()))
        .map(ring -> new Footprint(ring.subList(0, ring.size() - 1)));
  }

  /** Sets all labels; those of rank 3 or less that find no place are returned. */
  public List<String> place() {
    List<Waiting> arranged =
        waiting.stream().map(w -> w.stand() == Anchor.CENTRE ? onFewestLines(w) : w).toList();
    List<Optional<LabelPlacer.Spot>> spots =
        new LabelPlacer(space).place(arranged.stream().map(this::request).toList());
    List<String> homeless = new ArrayList<>();
    for (int i = 0; i < arranged.size(); i++) {
      Waiting w = arranged.get(i);
      if (spots.get(i).isPresent()) {
        set(w, spots.get(i).get());
      } else if (w.rank() <= ALWAYS_SHOWN) {
        homeless.add(String.join(" ", w.lines()));
      }
    }
    return homeless;
  }

  private LabelPlacer.Request request(Waiting w) {
    return new LabelPlacer.Request(
        w.anchor(), width(w), height(w), w.rank(), w.stand(), w.upright(), w.ground());
  }

  private double width(Waiting w) {
    return w.lines().stream()
        .mapToDouble(line -> type.width(line, w.heightMm(), w.bold()))
        .max()
        .orElse(0);
  }

  private static double height(Waiting w) {
    return w.lines().size() * Type.pitch(w.heightMm());
  }

  /**
   * In a flat shape one long line is read better than two over its edges; in a tall one, upright.
   * Where the shape is too small for all that is to be said, it says its name, which is the first
   * line; the rest stands in the tables. A callout stands whole beside its ground instead.
   */
  private Waiting onFewestLines(Waiting w) {
    List<Waiting> whole = arrangements(w, w.lines());
    if (whole.stream().anyMatch(this::isInItsGround)) {
      return clearest(whole);
    }
    if (w.callout()) {
      return whole.get(1);
    }
    List<Waiting> name = arrangements(w, w.lines().subList(0, 1));
    return name.stream()
        .filter(this::isInItsGround)
        .findFirst()
        .orElseGet(() -> w.ground().isPresent() ? name.get(0) : clearest(whole));
  }

  /** The lines under each other or joined, level and upright. */
  private static List<Waiting> arrangements(Waiting w, List<String> lines) {
    List<String> one = List.of(String.join(", ", lines));
    return List.of(
        w.arranged(lines, false),
        w.arranged(one, false),
        w.arranged(one, true),
        w.arranged(lines, true));
  }

  private Waiting clearest(List<Waiting> ways) {
    return ways.stream()
        .min(Comparator.comparingLong(a -> space.outlinesUnder(centred(a))))
        .orElseThrow();
  }

  /** Whether what it names has room for it between its plants; not for the label of a point. */
  private boolean isInItsGround(Waiting w) {
    Box box = centred(w);
    return w.ground().filter(g -> g.contains(box)).isPresent() && !space.isOnSymbol(box);
  }

  private Box centred(Waiting w) {
    return request(w).around(w.anchor(), w.upright());
  }

  private void set(Waiting w, LabelPlacer.Spot spot) {
    spot.leader()
        .ifPresent(
            leader -> {
              leaders.add(Ink.Path.line(LEADER, leader.from(), leader.to()));
              leaders.add(new Ink.Circle(leader.from(), ANCHOR_DOT_MM, LEADER_DOT));
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
