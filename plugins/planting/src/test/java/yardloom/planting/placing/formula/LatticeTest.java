package yardloom.planting.placing.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import yardloom.kernel.geom.Clearance;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.outside.OutsideRows;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;

class LatticeTest {
  private static final OutsideRows ROWS = OutsideRows.of(LatticeTest.class, "lattice.csv");

  private static final Point ORIGIN = Point.metres(0, 0);

  private static List<Point> points(Shape bed, Length spacing, Layout layout) {
    return Lattice.points(bed, spacing, Lattice.rowSpacing(spacing, layout), layout);
  }

  private static Shape bed(double widthM, double depthM) {
    return Shape.rectangle(ORIGIN, Length.metres(widthM), Length.metres(depthM));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "lattice.csv", numLinesToSkip = 1)
  void lattice_ofPublishedSpacings_holdsThatMany(
      String id, double widthIn, double lengthIn, double spacingIn, int square, int staggered) {
    Shape bed =
        Shape.rectangle(Point.metres(2, 3), Length.inches(widthIn), Length.inches(lengthIn));
    Length spacing = Length.inches(spacingIn);
    ROWS.same(id, "square", square, points(bed, spacing, Layout.SQUARE).size());
    ROWS.same(id, "staggered", staggered, points(bed, spacing, Layout.STAGGERED).size());
  }

  @Test
  void staggeredRows_atTwelveInches_areTenPointFourApart() {
    Length rows = Lattice.rowSpacing(Length.inches(12), Layout.STAGGERED);
    assertEquals(10.392, rows.inches(), 5e-4);
  }

  @Test
  void areaDensity_ofStaggeredBed_overstatesTheCount() {
    Shape bed = Shape.rectangle(ORIGIN, Length.inches(48), Length.inches(96));
    double byArea = 48 * 96 / (144 * Math.sqrt(3) / 2);
    assertTrue(points(bed, Length.inches(12), Layout.STAGGERED).size() < Math.floor(byArea));
  }

  /**
   * P05 (bloomindesigns.com: 0.79 plants a square foot at 13.5 in), P10 (trees an acre at 22 × 15
   * ft and 22 × 16 ft by 43560/(a·b); a page prints 132 for both).
   */
  @Test
  void wholeMultiplesOfTheSpacing_haveThePublishedDensity() {
    assertEquals(0.7901, perSquareFoot(11.25, 11.25, 1.125, 1.125), 1e-3);
    assertEquals(132.0, perSquareFoot(1500, 220, 15, 22) * 43_560, 0.01);
    assertEquals(123.75, perSquareFoot(1600, 220, 16, 22) * 43_560, 0.01);
  }

  private static double perSquareFoot(
      double lengthFt, double widthFt, double spacingFt, double rowFt) {
    Shape bed = Shape.rectangle(ORIGIN, Length.feet(lengthFt), Length.feet(widthFt));
    List<Point> plants =
        Lattice.points(bed, Length.feet(spacingFt), Length.feet(rowFt), Layout.SQUARE);
    return plants.size() / bed.area().squareFeet();
  }

  @Test
  void bedNarrowerThanSpacing_holdsNothing() {
    assertEquals(List.of(), points(bed(0.9, 5), Length.metres(1), Layout.SQUARE));
    assertEquals(5, points(bed(1, 5), Length.metres(1), Layout.SQUARE).size());
  }

  @Test
  void spacingOfAMillimetre_isRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> points(bed(3, 5), Length.millimetres(1), Layout.SQUARE));
  }

  @Property(tries = 200, seed = "20261125")
  void plants_keepHalfASpacingFromEdgesAndAFullOneFromEachOther(
      @ForAll @DoubleRange(min = 0.5, max = 3) double widthM,
      @ForAll @DoubleRange(min = 0.5, max = 6) double depthM,
      @ForAll @DoubleRange(min = 0.2, max = 1) double spacingM,
      @ForAll Layout layout,
      @ForAll @DoubleRange(min = 0, max = 90) double turn) {
    Shape bed = bed(widthM, depthM).turned(Angle.degrees(turn), ORIGIN);
    List<Point> plants = points(bed, Length.metres(spacingM), layout);
    Clearance clearance = Clearance.within(bed);
    for (int i = 0; i < plants.size(); i++) {
      assertTrue(clearance.of(plants.get(i)).metres() >= spacingM / 2 - 1e-5);
      for (int j = 0; j < i; j++) {
        assertTrue(plants.get(i).distance(plants.get(j)).metres() >= spacingM - 1e-6);
      }
    }
  }

  @Property(tries = 200, seed = "20261125")
  void mirroredBed_holdsAsManyPlants_andSquareOnesAreMirrored(
      @ForAll @DoubleRange(min = 0.5, max = 3) double widthM,
      @ForAll @DoubleRange(min = 3.2, max = 6) double depthM,
      @ForAll @DoubleRange(min = 0.21, max = 0.9) double spacingM,
      @ForAll @DoubleRange(min = 0.05, max = 0.6) double notchM,
      @ForAll Layout layout) {
    Shape notch = Shape.rectangle(ORIGIN, Length.metres(notchM), Length.metres(notchM * 1.3));
    Shape bed = bed(widthM, depthM).minus(notch);
    Shape mirror = bed.mirrored(ORIGIN, Point.metres(0, 1));
    List<Point> plants = points(bed, Length.metres(spacingM), layout);
    List<Point> mirrored = points(mirror, Length.metres(spacingM), layout);
    assertEquals(plants.size(), mirrored.size());
    if (layout == Layout.SQUARE && notchM < spacingM * 0.3) {
      for (Point p : plants) {
        Point image = Point.metres(-p.x().metres(), p.y().metres());
        assertTrue(mirrored.stream().anyMatch(q -> q.distance(image).metres() < 1e-5));
      }
    }
  }
}
