package yardloom.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Shape;
import yardloom.site.built.BarrierWords;

/** Where the name of a fence may stand, by hand in metres. */
class FenceNameTest {
  private static Shape ground(double fenceY) {
    PaintedYard yard = new PaintedYard().lot(20, 10);
    BarrierWords.fence(
        yard.in,
        "boards",
        Line.between(PaintedYard.p(4, fenceY), PaintedYard.p(14, fenceY)),
        PaintedYard.m(1.8),
        null,
        PaintedYard.m(0.1),
        null,
        null,
        null);
    List<Mark> marks = yard.paint("site.labels");
    return marks.stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .filter(l -> l.text().equals("Boards"))
        .findFirst()
        .flatMap(Mark.Label::ground)
        .orElseThrow();
  }

  /**
   * A fence of 10 m, 0.1 m thick: 1.2 m beside its middle line less half its thickness, 1.15 m wide
   * and on the lot; by the lot line, where the other side has 0.25 m, on the inner one.
   */
  @ParameterizedTest
  @CsvSource({"5, 11.5", "0.3, 11.5", "9.7, 11.5"})
  void name_standsBesideTheFenceWhereTheLotHasRoom(double y, double squareMetres) {
    Shape ground = ground(y);
    assertEquals(squareMetres, ground.area().squareMetres(), 1e-6);
    if (y != 5) {
      assertEquals(y < 5 ? y + 0.625 : y - 0.625, ground.centroid().y().metres(), 1e-6);
    }
  }
}
