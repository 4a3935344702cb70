package yardloom.program.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.draw.Style;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.unit.Length;

class SeenStylesTest {
  private static final Style BED = Style.filled("bed", "#00aa00");
  private static final Style STAGE = Style.filled("stage", "#ffffff").hatched(Style.Hatch.DOTS);

  private static Mark box(Style style, double xM, double widthM) {
    Shape shape = Shape.rectangle(Point.metres(xM, 2), Length.metres(widthM), Length.metres(5));
    return new Mark.Region(shape, style, "thing");
  }

  @Test
  void of_bedUnderItsHatch_isTheHatchAlone() {
    assertEquals(
        Set.of("stage"),
        SeenStyles.of(List.of(List.of(box(BED, 1, 3)), List.of(box(STAGE, 1, 3)))));
  }

  @Test
  void of_hatchUnderItsBed_isTheBedAlone() {
    assertEquals(
        Set.of("bed"), SeenStyles.of(List.of(List.of(box(STAGE, 1, 3)), List.of(box(BED, 1, 3)))));
  }

  /** Of two beds one is hidden, and of a third the last half metre is seen. */
  @Test
  void of_oneBedInPartSeen_isBoth() {
    assertEquals(
        Set.of("bed", "stage"),
        SeenStyles.of(
            List.of(
                List.of(box(BED, 1, 3), box(BED, 6, 2.5)),
                List.of(box(STAGE, 1, 3), box(STAGE, 6, 2)))));
  }

  /** An outline without a fill hides nothing, nor does anything hide a line or what is under it. */
  @Test
  void of_outlinesAndLines_hideNothing() {
    Style edge = Style.line("edge", "#000000", 0.25);
    Mark fence =
        new Mark.Stroke(
            Line.between(Point.metres(1, 3), Point.metres(4, 3)),
            Style.line("fence", "#000000", 0.5),
            "fence");
    assertEquals(
        Set.of("bed", "edge", "fence"),
        SeenStyles.of(List.of(List.of(fence, box(BED, 1, 3), box(edge, 1, 3)))));
  }
}
