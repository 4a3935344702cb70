package yardloom.sheet.label;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Layer;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Palette;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;
import yardloom.sheet.compose.Drawing;
import yardloom.sheet.font.FontWidths;
import yardloom.sheet.paper.Box;
import yardloom.sheet.paper.Ink;
import yardloom.sheet.paper.Type;
import yardloom.sheet.paper.View;

/** What a label says in ground of several sizes, at 1:100 on an area of 100 by 100 mm. */
class DrawingLabelsTest {
  private static final Box AREA = new Box(0, 0, 100, 100);

  private static List<String> texts(double widthM, double depthM, boolean ofGround) {
    Shape bed = Shape.rectangle(Point.metres(2, 2), Length.metres(widthM), Length.metres(depthM));
    Mark.Label label = new Mark.Label(bed.heart(), "Bed A\n12 m²", 2, false, 1, Mark.Anchor.CENTRE);
    TreeMap<Layer, List<Mark>> layers = new TreeMap<>();
    layers.put(
        new Layer("bed", "Beds", Layer.Band.WORKS),
        List.of(new Mark.Region(bed, Palette.BED, "bed")));
    layers.put(
        new Layer("labels", "Labels", Layer.Band.NOTES), List.of(ofGround ? label.on(bed) : label));
    View view = View.centred(bed.bounds(), 10, AREA);
    Type type = new Type(FontWidths.shipped());
    return texts(new Drawing(layers, view, AREA, type).inks());
  }

  private static List<String> texts(List<Ink> inks) {
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

  @Test
  void inFlatGround_allIsSaidOnOneLine() {
    assertEquals(List.of("Bed A, 12 m²"), texts(4, 0.5, true));
    assertEquals(List.of("Bed A, 12 m²"), texts(0.5, 4, true));
  }

  @Test
  void inSmallGround_theNameIsSaidAlone() {
    assertEquals(List.of("Bed A"), texts(1.2, 0.5, true));
    assertEquals(List.of("Bed A"), texts(0.2, 0.2, true));
  }

  /** A label of a point has no ground that could be too small. */
  @Test
  void atAPoint_allIsSaid() {
    assertEquals(List.of("Bed A", "12 m²"), texts(0.2, 0.2, false));
  }
}
