package yardloom.materials.surface;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import yardloom.facts.mulch.LaidLayer;
import yardloom.facts.mulch.Material;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.SurfaceKind;
import yardloom.kernel.draw.LegendEntry;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Panel;
import yardloom.kernel.draw.Style;
import yardloom.kernel.draw.Style.Hatch;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.table.Say;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

/** Sections through every different stack of the plan, in rows of four, to scale. */
public final class SectionFigure {
  private static final double WIDTH_M = 0.5;
  private static final double GAP_M = 0.68;
  private static final int IN_A_ROW = 4;

  // The name under a section, and the notes of the row below that stand above its top layer.
  private static final double BETWEEN_ROWS_M = 0.25;
  private static final double SOIL_M = 0.15;
  // Cardboard is 4 mm thick; drawn thicker, or a print at 1:10 would not show it.
  private static final double CARD_M = 0.008;

  // Tube of half an inch with its wall.
  private static final double TUBE_M = 0.016;
  private static final Style SOIL =
      Style.filled("section-soil", "#e9dfd0").hatched(Hatch.DIAGONAL).outlined(Palette.INK, 0.25);
  private static final Style CARD =
      Style.filled("section-cardboard", "#4a3c28").outlined(Palette.INK, 0.18);
  private static final Style BASE = Style.line("section-base", Palette.MUTED, 0.18);
  private static final Map<Material.Kind, Style> STYLES = new EnumMap<>(Material.Kind.class);

  static {
    STYLES.put(Material.Kind.CARDBOARD, CARD);
    STYLES.put(
        Material.Kind.COMPOST,
        Style.filled("section-compost", "#cdbfa6").hatched(Hatch.DOTS).outlined(Palette.INK, 0.25));
    STYLES.put(
        Material.Kind.DRIPLINE,
        Style.filled("section-dripline", "#2b2b2b").outlined(Palette.INK, 0.18));
    STYLES.put(
        Material.Kind.OWN,
        Style.filled("section-own", "#e3e0cf")
            .hatched(Hatch.HORIZONTAL)
            .outlined(Palette.INK, 0.25));
    STYLES.put(
        Material.Kind.WOOD_CHIPS,
        Style.filled("section-chips", "#f1e6d0").hatched(Hatch.CHIPS).outlined(Palette.INK, 0.25));
  }

  // Room for capitals of 2.4 mm at 1:12, which no sheet goes below.
  private static final double NOTE_PITCH_M = 0.068;
  private static final double NOTE_CHAR_M = 0.021;

  // Names under a section, at 1:12 as well, keep clear of those of its neighbours.
  private static final double OF_PITCH_M = 0.07;
  private static final int OF_CHARS = 44;

  // The title above them is larger and bold.
  private static final double TITLE_M = 0.02;

  // The figures of thinner layers would run into each other; their depth stands in the note.
  private static final double LEAST_DIMENSION_M = 0.09;

  private final UnitSystem units;
  private double lowestNote;
  private final List<Mark> marks = new ArrayList<>();

  private SectionFigure(UnitSystem units) {
    this.units = units;
  }

  public static Panel.Figure of(List<MulchSurface> surfaces, UnitSystem units) {
    SectionFigure figure = new SectionFigure(units);
    List<Named> different = named(List.copyOf(Stacks.alike(surfaces, units).values()));
    double floor = 0;
    int above = 0;
    for (int from = 0; from < different.size(); from += IN_A_ROW) {
      List<Named> row = different.subList(from, Math.min(from + IN_A_ROW, different.size()));
      floor -=
          from == 0
              ? 0
              : SOIL_M
                  + BETWEEN_ROWS_M
                  + (above == 0 ? 0 : TITLE_M + above * OF_PITCH_M)
                  + highest(row);
      figure.row(row, floor);
      above = row.stream().mapToInt(n -> n.of().size()).max().orElse(0);
    }
    List<LegendEntry> legend = new ArrayList<>();
    surfaces.stream()
        .flatMap(s -> s.courses().stream())
        .map(LaidLayer::material)
        .distinct()
        .sorted()
        .forEach(m -> legend.add(LegendEntry.area(m.title(), STYLES.get(m.kind()))));
    legend.add(LegendEntry.area("soil, not tilled", SOIL));
    double scale = units == UnitSystem.US ? 12 : 10;
    return new Panel.Figure("Mulch build-up sections", figure.marks, legend, 90, scale);
  }

  /** A stack, and the lines that say whose it is where another of its kind is built otherwise. */
  private record Named(MulchSurface surface, List<String> of) {}

  private static List<Named> named(List<List<MulchSurface>> stacks) {
    return stacks.stream()
        .map(
            alike -> {
              SurfaceKind kind = alike.get(0).kind();
              boolean alone = stacks.stream().filter(s -> s.get(0).kind() == kind).count() == 1;
              return new Named(alike.get(0), alone ? List.of() : names(alike));
            })
        .toList();
  }

  /** The names of the surfaces, in lines that stay within a section's part of its row. */
  private static List<String> names(List<MulchSurface> alike) {
    List<String> lines = new ArrayList<>();
    String line = "";
    String all = NameRuns.text(alike.stream().map(s -> s.of().name()).toList());
    for (String name : all.split("(?<=,) ")) {
      if (!line.isEmpty() && line.length() + 1 + name.length() > OF_CHARS) {
        lines.add(line);
        line = "";
      }
      line += line.isEmpty() ? name : " " + name;
    }
    lines.add(line);
    return lines;
  }

  private static double highest(List<Named> row) {
    return row.stream().mapToDouble(n -> heightM(n.surface())).max().orElse(0);
  }

  private static double heightM(MulchSurface surface) {
    return surface.courses().stream()
        .mapToDouble(c -> c.depth().map(d -> d.value().metres()).orElse(CARD_M))
        .sum();
  }

  /** Sections from left to right on one line, which keeps room for the notes of the last. */
  private void row(List<Named> row, double floor) {
    double end = row.size() * (WIDTH_M + GAP_M);
    marks.add(
        new Mark.Stroke(
            Line.between(Point.metres(0, floor - SOIL_M), Point.metres(end, floor - SOIL_M)),
            BASE,
            "base"));
    for (int i = 0; i < row.size(); i++) {
      stack(i * (WIDTH_M + GAP_M), floor, row.get(i));
    }
  }

  private void stack(double x, double floor, Named named) {
    MulchSurface surface = named.surface();
    layer(x, floor - SOIL_M, SOIL_M, SOIL, "soil");
    lowestNote = floor - 1;
    double y = floor;
    for (LaidLayer course : surface.courses()) {
      y += course(x, y, course);
    }
    marks.add(
        new Mark.Label(
            Point.metres(x + WIDTH_M / 2, floor - SOIL_M - 0.05),
            surface.kind().title(),
            2.5,
            true,
            0,
            Mark.Anchor.FIXED));
    double belowM = floor - SOIL_M - 0.05 - TITLE_M;
    for (String line : named.of()) {
      belowM -= OF_PITCH_M;
      Point at = Point.metres(x + WIDTH_M / 2, belowM);
      marks.add(new Mark.Label(at, line, 2.0, false, 0, Mark.Anchor.FIXED));
    }
  }

  /** Draws one layer on what lies at {@code y}; returns by how much the stack grows. */
  private double course(double x, double y, LaidLayer course) {
    Style style = STYLES.get(course.material().kind());
    if (course.material().equals(Material.DRIPLINE)) {
      for (double share : new double[] {0.25, 0.75}) {
        Point middle = Point.metres(x + share * WIDTH_M, y + TUBE_M / 2);
        marks.add(new Mark.Region(Shape.circle(middle, Length.metres(TUBE_M / 2)), style, "tube"));
      }
      note(x, y + TUBE_M / 2, course.material().title());
      return 0;
    }
    if (course.depth().isEmpty()) {
      layer(x, y, CARD_M, style, "cardboard, lapped and wetted");
      note(x, y + CARD_M / 2, "cardboard, wetted");
      return CARD_M;
    }
    Length depth = course.depth().get().value();
    String text = Stacks.layer(course, units);
    layer(x, y, depth.metres(), style, text);
    boolean thin = depth.metres() < LEAST_DIMENSION_M;
    if (!thin) {
      marks.add(
          new Mark.Dimension(
              Point.metres(x, y),
              Point.metres(x, y + depth.metres()),
              Length.metres(0.06),
              Say.laid(depth, units)));
    }
    note(x, y + depth.metres() / 2, thin ? text : course.material().title());
    return depth.metres();
  }

  private void layer(double x, double y, double depthM, Style style, String about) {
    Shape box = Shape.rectangle(Point.metres(x, y), Length.metres(WIDTH_M), Length.metres(depthM));
    marks.add(new Mark.Region(box, style, about));
  }

  /** Text beside a layer, led to it; stacked so that thin layers' texts stay apart. */
  private void note(double x, double y, String text) {
    double textY = Math.max(y, lowestNote);
    lowestNote = textY + NOTE_PITCH_M;
    Point from = Point.metres(x + WIDTH_M, y);
    Point to = Point.metres(x + WIDTH_M + 0.05, textY);
    marks.add(
        new Mark.Stroke(
            Line.between(from, to), Style.line("section-leader", Palette.INK, 0.18), text));
    double halfM = text.length() * NOTE_CHAR_M / 2;
    marks.add(
        new Mark.Label(
            Point.metres(x + WIDTH_M + 0.06 + halfM, textY),
            text,
            2.0,
            false,
            2,
            Mark.Anchor.FIXED));
  }
}
