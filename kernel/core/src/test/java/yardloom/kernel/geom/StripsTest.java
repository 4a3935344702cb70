package yardloom.kernel.geom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

class StripsTest {
  private static final OutsideRows ROWS = OutsideRows.of(StripsTest.class, "strip-counts.csv");

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "strip-counts.csv", numLinesToSkip = 1)
  void fill_rectangle_countAndUsedBreadthFollowTheFormula(
      String id,
      double fieldFt,
      double bedFt,
      double gapFt,
      int count,
      double usedFt,
      String source) {
    Shape field = Shape.rectangle(Point.metres(0, 0), Length.feet(fieldFt), Length.feet(50));
    for (double bearing : new double[] {0, 180}) {
      List<Shape> strips =
          Strips.fill(
              field,
              Strips.Layout.of(Length.feet(bedFt), Length.feet(gapFt), Angle.degrees(bearing)));
      ROWS.same(id, "strips at " + bearing, count, strips.size());
      double lowM = strips.stream().mapToDouble(s -> s.bounds().getMinX()).min().getAsDouble();
      double highM = strips.stream().mapToDouble(s -> s.bounds().getMaxX()).max().getAsDouble();
      ROWS.check(id, "used ft at " + bearing, usedFt, (highM - lowM) / 0.3048, 1e-6);
    }
  }

  @Test
  void fill_turnedField_sameCountAtTheTurnedBearing() {
    Shape field = Shape.rectangle(Point.metres(0, 0), Length.feet(30), Length.feet(50));
    Shape turned = field.turned(Angle.degrees(-30), Point.metres(3, 4));
    List<Shape> strips =
        Strips.fill(turned, Strips.Layout.of(Length.feet(4), Length.feet(2), Angle.degrees(30)));
    assertEquals(5, strips.size());
    for (Shape strip : strips) {
      assertEquals(200 * 0.09290304, strip.area().squareMetres(), 1e-5);
      assertTrue(turned.grown(Length.millimetres(0.01)).covers(strip));
    }
  }

  @Test
  void longestEdge_turnedField_isItsBearing() {
    Shape field = Shape.rectangle(Point.metres(0, 0), Length.metres(4), Length.metres(9));
    assertEquals(0, Strips.longestEdge(field).degrees(), 1e-9);
    assertEquals(
        30,
        Strips.longestEdge(field.turned(Angle.degrees(-30), Point.metres(0, 0))).degrees(),
        1e-9);
  }

  @Test
  void fill_millimetreStripsOnALargeField_isRefused() {
    Shape field = Shape.rectangle(Point.metres(0, 0), Length.metres(100), Length.metres(100));
    assertThrows(
        PlanException.class,
        () -> Strips.fill(field, Strips.Layout.of(Length.millimetres(4), Length.ZERO, Angle.ZERO)));
  }
}
