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

  /** A name of more lines is no longer read as one. */
  private static final int MOST_LINES = 4;

  /** A short name in many lines is read word by word. */
  private static final int LETTERS_A_LINE = 8;

  /** Beside its ground a longer name is broken. */
  private static final double LONG_MM = 42;

  private static final double ANCHOR_DOT_MM = 0.45;
  private static final double POINT_MM = 0.6;
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

    /** Where it stands by itself or not at all. */
    Waiting notLed() {
      int low = Math.max(rank, LabelPlacer.LAST_LED + 1);
      return new Waiting(anchor, lines, heightMm, bold, low, stand, upright, ground, callout);
    }

    /** On its point, whatever lies there. */
    Waiting fixed() {
      return new Waiting(
          anchor, lines, heightMm, bold, rank, Anchor.FIXED, false, Optional.empty(), false);
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
  private final List<Ink.Text> texts = new ArrayList<>();
  private final List<String> homeless = new ArrayList<>();
  private final List<String> figures = new ArrayList<>();

  public DrawingLabels(LabelSpace space, View view, Box area, Type type) {
    this.space = space;
    this.view = view;
    this.area = area;
    this.type = type;
  }

  public List<Ink> leaders() {
    return leaders;
  }

  public List<Ink.Text> texts() {
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

  /** Sets all labels; {@link #homeless} and {@link #figures} then say what could not be written. */
  public void place() {
    // What is named at its point is seen there: no other name stands on it.
    waiting.stream()
        .filter(w -> w.stand() == Anchor.NEAR && w.ground().isEmpty())
        .forEach(w -> space.avoidSymbol(w.anchor(), POINT_MM));
    List<Waiting> arranged = waiting.stream().map(this::arranged).toList();
    LabelSpace.State empty = space.state();
    List<Optional<LabelSpot>> spots = spots(arranged);
    List<String> crowded = NameSeries.crowded(housed(spots));
    if (!crowded.isEmpty()) {
      space.backTo(empty);
      boolean numbered = waiting.stream().anyMatch(w -> w.stand() == Anchor.POINT);
      arranged = arranged.stream().map(w -> shortened(w, crowded, numbered)).toList();
      spots = spots(arranged);
      figures.addAll(numbered ? List.of() : NameSeries.notes(crowded));
    }
    for (int i = 0; i < arranged.size(); i++) {
      Waiting w = arranged.get(i);
      if (spots.get(i).isPresent()) {
        set(w, spots.get(i).get());
      } else if (w.rank() <= ALWAYS_SHOWN) {
        homeless.add(String.join(" ", w.lines()));
      }
    }
  }

  /** Texts of rank 3 or less that found no place. */
  public List<String> homeless() {
    return homeless;
  }

  /** What figures mean that stand for names. */
  public List<String> figures() {
    return figures;
  }

  private List<Optional<LabelSpot>> spots(List<Waiting> arranged) {
    return new LabelPlacer(space).place(arranged.stream().map(this::request).toList());
  }

  /**
   * Of the names of ground whether they stand on it or beside it without a leader: whole names,
   * though they may stand there on several lines.
   */
  private Map<String, Boolean> housed(List<Optional<LabelSpot>> spots) {
    Map<String, Boolean> housed = new HashMap<>();
    for (int i = 0; i < waiting.size(); i++) {
      boolean home = spots.get(i).filter(s -> !s.isLed()).isPresent();
      if (waiting.get(i).ground().isPresent()) {
        housed.merge(waiting.get(i).lines().get(0), home, Boolean::logicalAnd);
      }
    }
    return housed;
  }

  /**
   * A name of a crowded series by its figure alone, centred where its ground is a little too small
   * for that. Among numbers of points it would be read as one of them: there a name stands whole or
   * not at all, since the lists of those points have it.
   */
  private Waiting shortened(Waiting w, List<String> crowded, boolean numbered) {
    if (w.ground().isEmpty() || !crowded.contains(w.lines().get(0))) {
      return w;
    }
    if (numbered) {
      return w.notLed();
    }
    Waiting figure = w.arranged(List.of(NameSeries.figure(w.lines().get(0)).orElseThrow()), false);
    Box ground = w.ground().get().bounds();
    boolean fits = width(figure) <= ground.width() && height(figure) <= ground.height();
    return fits ? figure : figure.fixed();
  }

  private Waiting arranged(Waiting w) {
    return switch (w.stand()) {
      case CENTRE -> onFewestLines(w);
      case INSIDE -> w.ground().isPresent() ? inItsGround(w) : w;
      default -> w;
    };
  }

  private LabelRequest request(Waiting w) {
    return new LabelRequest(
        w.anchor(),
        width(w),
        height(w),
        w.rank(),
        w.stand(),
        w.upright(),
        w.ground(),
        w.bold() && w.ground().isPresent());
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
    Waiting best = clearest(whole);
    boolean fits = whole.stream().anyMatch(this::isInItsGround);
    if (fits && space.linework().outlinesUnder(centred(best)) == 0) {
      return best;
    }
    Optional<Waiting> aside = whole.stream().filter(this::isClearSomewhere).findFirst();
    if (fits || aside.isPresent()) {
      return aside.orElse(best);
    }
    if (w.callout()) {
      return whole.get(1);
    }
    List<Waiting> name = arrangements(w, w.lines().subList(0, 1));
    return name.stream()
        .filter(this::isInItsGround)
        .findFirst()
        .orElseGet(() -> w.ground().isPresent() ? broken(name.get(0)) : best);
  }

  /** A name in a picture, on one line if that has room, level or upright. */
  private Waiting inItsGround(Waiting w) {
    Box level = centred(w.arranged(w.lines(), false));
    Box upright = centred(w.arranged(w.lines(), true));
    Footprint ground = w.ground().orElseThrow();
    return ground.contains(level) || ground.contains(upright) ? w : broken(w);
  }

  /** A name of several words on as few lines as its ground holds, or as are read well outside. */
  private Waiting broken(Waiting name) {
    String text = String.join(" ", name.lines());
    Footprint ground = name.ground().orElseThrow();
    int mostLines = Math.max(2, Math.min(MOST_LINES, text.length() / LETTERS_A_LINE));
    for (int most = 2; most <= mostLines; most++) {
      List<String> lines = WrappedName.onLines(text, most);
      for (boolean upright : new boolean[] {false, true}) {
        Waiting way = name.arranged(lines, upright);
        if (ground.contains(centred(way))) {
          return way;
        }
      }
    }
    Waiting way = name;
    for (int most = 2; most <= mostLines && width(way) > LONG_MM; most++) {
      way = name.arranged(WrappedName.onLines(text, most), false);
    }
    return way;
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
        .min(Comparator.comparingLong(a -> space.linework().outlinesUnder(centred(a))))
        .orElseThrow();
  }

  /** Whether what it names has room for it between its plants; not for the label of a point. */
  private boolean isInItsGround(Waiting w) {
    Box box = centred(w);
    return w.ground().filter(g -> g.contains(box)).isPresent() && !space.linework().isOnSymbol(box);
  }

  /** Whether what it names has room for it off its middle, on no edge and no plant. */
  private boolean isClearSomewhere(Waiting w) {
    return w.ground().isPresent()
        && waiting.size() <= LabelPlacer.MANY
        && GroundPlaces.in(w.ground().get(), request(w), w.upright()).stream()
            .map(Place::box)
            .anyMatch(box -> w.ground().get().contains(box) && space.linework().isClear(box));
  }

  private Box centred(Waiting w) {
    return request(w).around(w.anchor(), w.upright());
  }

  private void set(Waiting w, LabelSpot spot) {
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
