package yardloom.materials.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Point;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Volume;
import yardloom.materials.data.DataTable;

/** Soil checks E01 to E10. */
class EarthworkTest {
  private static List<Length> metres(double... values) {
    return java.util.Arrays.stream(values).mapToObj(Length::metres).toList();
  }

  private static Area trapezoid(double depthFt) {
    // Base 20 ft, side slopes 1½ to 1.
    return Area.squareFeet(depthFt * (20 + 1.5 * depthFt));
  }

  @Test
  void fill_endAreasWithPyramid_matchesWikibooks() {
    // E01
    List<Area> areas =
        List.of(60.0, 50.0, 25.0, 5.0, 0.0).stream().map(Area::squareMetres).toList();
    Volume v = Earthwork.along(metres(0, 50, 75, 100, 115), areas, true);
    assertEquals(4087.5, v.cubicMetres(), 0.05);
  }

  private static final double[] CUTS = {0, 5, 10, 15, 0};

  @Test
  void cut_byEndAreas_matchesRailroadBook() {
    // E02: Vose 1857, §108; 56 250 exact, printed 56 200 from truncated areas.
    double ft3 = 0;
    for (int i = 1; i < CUTS.length; i++) {
      ft3 +=
          Earthwork.endArea(trapezoid(CUTS[i - 1]), trapezoid(CUTS[i]), Length.feet(50))
              .cubicFeet();
    }
    assertEquals(56_250, ft3, 1e-6);
  }

  @Test
  void cut_byPrismoids_isLess() {
    // E03: 3125 + 11875 + 24375 + 13125; end areas give 7.1 % more.
    double[] parts = {3125, 11_875, 24_375, 13_125};
    double sum = 0;
    for (int i = 1; i < CUTS.length; i++) {
      double ft3 =
          Earthwork.prismoid(
                  trapezoid(CUTS[i - 1]),
                  trapezoid((CUTS[i - 1] + CUTS[i]) / 2),
                  trapezoid(CUTS[i]),
                  Length.feet(50))
              .cubicFeet();
      assertEquals(parts[i - 1], ft3, 1e-6);
      sum += ft3;
    }
    assertEquals(52_500, sum, 1e-6);
    assertEquals(0.071, 56_250 / sum - 1, 0.001);
  }

  @ParameterizedTest
  @CsvSource({
    // E04: exact; the book prints 59, 236, 483, 236.
    "2.5, 59.375, 59",
    "7.5, 234.375, 236",
    "12.5, 484.375, 483"
  })
  void middleAreas_trapezoid_areExact(double h, double exact, double printed) {
    assertEquals(exact, trapezoid(h).squareFeet(), 1e-9);
    assertEquals(printed, trapezoid(h).squareFeet(), 2);
  }

  @Test
  void gridCell_meanOfCorners_matchesReferenceGuide() {
    // E05: corners 75.4, 77.5, 74.6, 80.5 to grade 83 over 2000 ft²: fill 6.0 ft, 444.4 yd³.
    Volume v =
        Earthwork.cell(
            Area.squareFeet(2000),
            Length.feet(83 - 75.4),
            Length.feet(83 - 77.5),
            Length.feet(83 - 74.6),
            Length.feet(83 - 80.5));
    assertEquals(444.4, v.cubicYards(), 0.05);
  }

  @Test
  void grid_fourCellsOfOneFoot_matchesPage() {
    // E06
    Length foot = Length.feet(1);
    Volume v = Earthwork.cell(Area.squareFeet(2500), foot, foot, foot, foot).times(4);
    assertEquals(370.4, v.cubicYards(), 0.05);
  }

  @Property(seed = "20261125")
  void triangles_ofAPlane_giveAreaTimesCentroidDepth(
      @ForAll @DoubleRange(min = 1, max = 9) double a,
      @ForAll @DoubleRange(min = 0, max = 0.3) double b,
      @ForAll @DoubleRange(min = 0, max = 0.3) double c,
      @ForAll @DoubleRange(min = 0.05, max = 0.95) double u) {
    // E07: a 6 × 4 rectangle fanned from an inner point.
    List<Point> corners =
        List.of(Point.metres(0, 0), Point.metres(6, 0), Point.metres(6, 4), Point.metres(0, 4));
    Point hub = Point.metres(6 * u, 4 * u);
    double sum = 0;
    for (int i = 0; i < 4; i++) {
      List<Point> t = List.of(corners.get(i), corners.get((i + 1) % 4), hub);
      List<Length> z =
          t.stream().map(p -> Length.metres(a + b * p.x().metres() + c * p.y().metres())).toList();
      sum += Earthwork.triangle(t, z).cubicMetres();
    }
    double expected = 24 * (a + b * 3 + c * 2);
    assertEquals(expected, sum, expected * 1e-9);
  }

  @Property(seed = "20261125")
  void endArea_pyramid_isHalfAgainAsMuch(@ForAll @DoubleRange(min = 0.1, max = 90) double m2) {
    // E08
    Area base = Area.squareMetres(m2);
    Length run = Length.metres(7);
    double end = Earthwork.endArea(base, Area.ZERO, run).cubicMetres();
    double pyramid = Earthwork.prismoid(base, base.times(0.25), Area.ZERO, run).cubicMetres();
    assertEquals(m2 * 7 / 3, pyramid, m2 * 1e-9);
    assertEquals(m2 * 7 / 2, end, m2 * 1e-9);
    assertTrue(end >= pyramid);
    assertEquals(pyramid, Earthwork.pyramid(base, run).cubicMetres(), m2 * 1e-9);
  }

  @Test
  void stations_mismatched_areRefused() {
    assertThrows(
        PlanException.class, () -> Earthwork.along(metres(0, 1), List.of(Area.ZERO), false));
    assertThrows(
        PlanException.class,
        () -> Earthwork.along(metres(1, 0), List.of(Area.ZERO, Area.ZERO), false));
  }

  @ParameterizedTest
  @CsvSource({
    // E09 (cost-book page), E10 (man-hour sheet, weak): data within ±50 %.
    "fine grading by hand, sqft, 0.006", "hand backfill and tamp, yd3, 0.86",
    "base hand-graded 4 in, sqft, 0.014", "hand dig pier holes, yd3, 1.32",
    "hand excavation, m3, 4.0"
  })
  void labour_published_areTheShippedData(String task, String unit, double hours) {
    var row = DataTable.shipped("labour.csv").row("task", task);
    assertEquals(unit, row.text("unit"));
    assertEquals(hours, row.number("likely_h"), 1e-9);
    assertTrue(row.number("low_h") < hours && hours < row.number("high_h"));
  }

  @Test
  void fineGrading_hours_meanSquareFeetPerHour() {
    // E09: 165-170 ft²/h.
    double rate =
        1 / DataTable.shipped("labour.csv").row("task", "fine grading by hand").number("likely_h");
    assertEquals(167.5, rate, 2.5);
  }
}
