package yardloom.sheet.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.sheet.compose.Drawing;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;
import yardloom.sheet.paper.Xy;

/** What a label says in ground of several sizes, at 1:100 on an area of 100 by 100 mm. */
class DrawingLabelsTest {
  private static final Box AREA = new Box(0, 0, 100, 100);

  private static Shape bed(double widthM, double depthM) {
    return Shape.rectangle(Point.metres(2, 2), Length.metres(widthM), Length.metres(depthM));
  }

  private static Mark.Label label(Shape bed, String text, int rank) {
    return new Mark.Label(bed.heart(), text, 2, false, rank, Mark.Anchor.CENTRE);
  }

  private static List<String> texts(double widthM, double depthM, boolean ofGround) {
    Shape bed = bed(widthM, depthM);
    Mark.Label label = label(bed, "Bed A\n12 m²", 1);
    return texts(bed, List.of(ofGround ? label.on(bed) : label));
  }

  private static List<String> texts(Shape bed, List<Mark> labels) {
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(
        new Layer("bed", "Beds", Layer.Band.WORKS),
        List.of(new Mark.Region(bed, Palette.BED, "bed")));
    layers.put(new Layer("labels", "Labels", Layer.Band.NOTES), labels);
    View view = View.centred(bed.bounds(), 10, AREA);
    Type type = new Type(FontWidths.shipped());
    return texts(new Drawing(layers, view, AREA, type).inks());
  }

  private static List<String> texts(List<? extends Ink> inks) {
    return inks.stream()
        .flatMap(
            ink ->
                ink instanceof Ink.Group group
                    ? texts(group.inks()).stream()
                    : ink instanceof Ink.Text text
                        ? List.of(text.content()).stream()
                        : List.<String>of().stream())
        .toList();
  }

  @Test
  void inWideGround_allLinesStandUnderEachOther() {
    assertEquals(List.of("Bed A", "12 m²"), texts(4, 4, true));
  }

  /**
   * 64 beds of 20 by 12 mm hold their names on two lines; a block of 5 by 4 beds of 3 mm holds none
   * of its 20, and no name stands beside its 6 inner ones. Even if all 20 have no room they are
   * less than a quarter of the 84 names of the series; of the 20 alone the 6 are more than that.
   */
  @Test
  void namesOnTwoLines_countInTheirSeries_soThatItKeepsThem() {
    Box area = new Box(0, 0, 300, 200);
    View view =
        View.centred(
            Shape.rectangle(Point.metres(0, 0), Length.metres(30), Length.metres(20)).bounds(),
            10,
            area);
    DrawingLabels labels =
        new DrawingLabels(new LabelSpace(area), view, area, new Type(FontWidths.shipped()));
    for (int i = 0; i < 84; i++) {
      Shape bed =
          i < 64
              ? rectangle(1 + 2.2 * (i % 8), 1 + 1.4 * (i / 8), 2, 1.2)
              : rectangle(24 + 0.3 * (i % 5), 15 + 0.3 * ((i - 64) / 5), 0.3, 0.3);
      labels.add(label(bed, "Strawberry bed " + (i + 1), 3).on(bed));
    }
    labels.place();
    assertEquals(List.of(), labels.figures());
    List<String> texts = texts(labels.texts());
    assertTrue(texts.contains("bed 1") && texts.contains("bed 64"), texts.toString());
  }

  private static Shape rectangle(double x, double y, double widthM, double depthM) {
    return Shape.rectangle(Point.metres(x, y), Length.metres(widthM), Length.metres(depthM));
  }

  @Test
  void inFlatGround_allIsSaidOnOneLine() {
    assertEquals(List.of("Bed A, 12 m²"), texts(4, 0.5, true));
    assertEquals(List.of("Bed A, 12 m²"), texts(0.5, 4, true));
  }

  /**
   * A bed of 80 by 14 mm on paper holds its name on one line, but over the edge of a tree trained
   * flat, which leaves 24 mm right of it: there both lines stand under each other. "Bed A" is named
   * 4 m wide, so that its middle lies on that edge.
   */
  @Test
  void overAnEdgeInItsMiddle_allIsSaidAsideOfIt() {
    Shape bed = bed(8, 1.4);
    Mark flat =
        new Mark.Region(
            Shape.rectangle(Point.metres(2.2, 2.3), Length.metres(5.4), Length.metres(0.8)),
            Palette.BED,
            "flat");
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(
        new Layer("bed", "Beds", Layer.Band.WORKS),
        List.of(new Mark.Region(bed, Palette.BED, "bed"), flat));
    layers.put(
        new Layer("labels", "Labels", Layer.Band.NOTES),
        List.of(label(bed, "Espalier row\n120 sq ft", 1).on(bed)));
    View view = View.centred(bed.bounds(), 10, AREA);
    List<Ink> inks = new Drawing(layers, view, AREA, new Type(FontWidths.shipped())).inks();
    assertEquals(List.of("Espalier row", "120 sq ft"), texts(inks));
  }

  @Test
  void inSmallGround_theNameIsSaidAlone() {
    assertEquals(List.of("Bed A"), texts(1.2, 0.5, true));
    assertEquals(List.of("Bed A"), texts(0.2, 0.2, true));
  }

  /**
   * A bed of 60 by 14 mm, whose middle lies at 50, 50 on the area of 100 by 100 mm. A way is drawn
   * along the bed's middle: under the bed's fill nobody sees it, over it the name stands beside it.
   */
  @Test
  void overALineUnderTheFill_theNameStandsInTheMiddle_overALineOnIt_besideTheLine() {
    Shape bed = bed(6, 1.4);
    Mark way =
        new Mark.Stroke(
            Line.between(Point.metres(1.5, 2.7), Point.metres(8.5, 2.7)),
            Style.line("way", Palette.INK, 0.25),
            "way");
    Mark ground = new Mark.Region(bed, Palette.BED, "bed");
    assertEquals(50, nameAt(bed, List.of(way, ground)), 1);
    assertTrue(Math.abs(nameAt(bed, List.of(ground, way)) - 50) > 1.2);
  }

  /** How far down the middle of the name stands; its letters are 2.4 mm high about it. */
  private static double nameAt(Shape bed, List<Mark> works) {
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(new Layer("works", "Works", Layer.Band.WORKS), works);
    layers.put(
        new Layer("labels", "Labels", Layer.Band.NOTES), List.of(label(bed, "Bed A", 1).on(bed)));
    View view = View.centred(bed.bounds(), 10, AREA);
    List<Ink> inks = new Drawing(layers, view, AREA, new Type(FontWidths.shipped())).inks();
    return inks.stream()
        .filter(i -> i instanceof Ink.Group g && g.name().equals("labels"))
        .flatMap(i -> ((Ink.Group) i).inks().stream())
        .mapToDouble(i -> ((Ink.Text) i).at().y() - 1.2)
        .findFirst()
        .orElseThrow();
  }

  /** A label of a point has no ground that could be too small. */
  @Test
  void atAPoint_allIsSaid() {
    assertEquals(List.of("Bed A", "12 m²"), texts(0.2, 0.2, false));
  }

  /** Two painters name one bed; the one that ranks first begins, whoever paints first. */
  @Test
  void ofOneGround_allIsSaidInOneText_wholeAlsoWhereTheGroundIsSmall() {
    for (double widthM : new double[] {4, 1.2}) {
      Shape bed = bed(widthM, 0.5);
      List<Mark> labels =
          List.of(
              label(bed, "tomato", 2).on(bed(widthM, 0.5)), label(bed, "Bed A\n12 m²", 1).on(bed));
      assertEquals(List.of("Bed A, 12 m², tomato"), texts(bed, labels), widthM + " m");
    }
  }

  /** A tree's name and its key for the nursery, a tap and what hangs on it: one leader, not two. */
  @Test
  void atOnePoint_allIsSaidInOneText_butNumbersStandAlone() {
    Shape bed = bed(4, 4);
    Point at = Point.metres(3, 3);
    Mark.Label key = new Mark.Label(at, "1 MD", 2, true, 4, Mark.Anchor.NEAR);
    Mark.Label name = new Mark.Label(at, "Apple 1", 2, false, 2, Mark.Anchor.NEAR);
    Mark.Label number = new Mark.Label(at, "17", 2, true, 3, Mark.Anchor.POINT);
    assertEquals(List.of("Apple 1", "1 MD", "17"), texts(bed, List.of(key, name, number)));
  }

  /**
   * A point 2 mm below the top line of a lot, with the two edges of a path under it: a text just
   * above it lies on the line of the lot. Were that line thin, it would stand there; off the heavy
   * one of a lot it keeps.
   */
  @Test
  void lotLine_isCrossedLessReadilyThanThinOnes() {
    assertTrue(isOnTop(Palette.SETBACK));
    assertFalse(isOnTop(Palette.LOT_LINE));
  }

  private static boolean isOnTop(Style top) {
    Shape lot = Shape.rectangle(Point.metres(0, 0), Length.metres(9), Length.metres(6));
    List<Mark> edges = new ArrayList<>();
    for (double x : new double[] {4.2, 4.8}) {
      edges.add(
          new Mark.Stroke(
              Line.between(Point.metres(x, 0), Point.metres(x, 5.75)), Palette.SETBACK, "path"));
    }
    // No room beside it.
    for (double x : new double[] {0.2, 2.6, 6.4, 8.8}) {
      for (double y = 0.1; y < 7; y += 0.1) {
        edges.add(
            new Mark.Stroke(
                Line.between(Point.metres(x - 1, y), Point.metres(x + 1, y)),
                Palette.SETBACK,
                "x"));
      }
    }
    Point at = Point.metres(4.5, 5.8);
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(new Layer("edges", "Edges", Layer.Band.WORKS), edges);
    layers.put(
        new Layer("lot", "Lot", Layer.Band.WORKS), List.of(new Mark.Region(lot, top, "lot line")));
    layers.put(
        new Layer("labels", "Labels", Layer.Band.NOTES),
        List.of(new Mark.Label(at, "see: Points", 2, false, 2, Mark.Anchor.NEAR)));
    View view = View.centred(lot.bounds(), 10, AREA);
    Drawing drawing = new Drawing(layers, view, AREA, new Type(FontWidths.shipped()));
    Ink.Text text = inks(drawing.inks()).findFirst().orElseThrow();
    double line = view.toPaper(Point.metres(4.5, 6)).y();
    List<Xy> corners = text.room(FontWidths.shipped()).corners();
    return corners.stream().anyMatch(c -> c.y() < line)
        && corners.stream().anyMatch(c -> c.y() > line);
  }

  private static Stream<Ink.Text> inks(List<? extends Ink> inks) {
    return inks.stream()
        .flatMap(
            ink ->
                ink instanceof Ink.Group group
                    ? inks(group.inks())
                    : ink instanceof Ink.Text text ? Stream.of(text) : Stream.empty());
  }
}
