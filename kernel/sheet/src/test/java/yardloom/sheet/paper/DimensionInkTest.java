package yardloom.sheet.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import yardloom.kernel.draw.Mark;
import yardloom.kernel.geom.Point;
import yardloom.kernel.unit.Length;

/** Dimension lines at 10 mm a metre, the plan's (0, 10) in the upper left corner; by hand. */
class DimensionInkTest {
  private static final View VIEW = new View(10, 0, 10, new Xy(0, 0));

  private static Mark.Dimension dimension(double x1, double y1, double x2, double y2, double off) {
    return new Mark.Dimension(
        Point.metres(x1, y1), Point.metres(x2, y2), Length.metres(off), "4.00 m");
  }

  private static DimensionInk ink(double x1, double y1, double x2, double y2, double off) {
    return new DimensionInk(dimension(x1, y1, x2, y2, off), VIEW);
  }

  private static String at(Xy p) {
    return String.format(
        Locale.ROOT,
        "%.2f,%.2f",
        Math.round(p.x() * 100) / 100.0 + 0.0,
        Math.round(p.y() * 100) / 100.0 + 0.0);
  }

  private static List<String> lines(DimensionInk ink) {
    return ink.lines().stream()
        .map(i -> (Ink.Path) i)
        .map(
            p ->
                p.style().name()
                    + " "
                    + p.tracks().get(0).points().stream()
                        .map(DimensionInkTest::at)
                        .collect(Collectors.joining(" ")))
        .toList();
  }

  /**
   * 0.8 m left of a way to the right is 8 mm above it. Extensions begin 1 mm off the foot and end
   * 1.5 mm beyond the line; ticks of 2 mm lean by 45°, ±0.71 mm.
   */
  @Test
  void lines_standBesideTheWay() {
    DimensionInk ink = ink(1, 2, 5, 2, 0.8);
    assertEquals(
        List.of(
            "dimension 10.00,79.00 10.00,70.50",
            "dimension 50.00,79.00 50.00,70.50",
            "dimension 10.00,72.00 50.00,72.00",
            "dimension-tick 9.29,72.71 10.71,71.29",
            "dimension-tick 49.29,72.71 50.71,71.29"),
        lines(ink));
    assertEquals("30.00,72.00", at(ink.middle()));
    assertEquals(
        List.of(
            new Coordinate(1, 2),
            new Coordinate(5, 2),
            new Coordinate(1, 2.8),
            new Coordinate(5, 2.8)),
        DimensionInk.ends(dimension(1, 2, 5, 2, 0.8)));
    assertEquals(1, DimensionInk.ends(dimension(1, 2, 1, 2, 0.8)).size());
  }

  /** Less than 5 mm beside is 5 mm; on the way itself there is nothing to extend. */
  @Test
  void lines_keepAwayFromTheWay_orLieOnIt() {
    assertEquals("10.00,75.00", at(ink(1, 2, 5, 2, 0.2).lineFrom()));
    assertEquals("50.00,85.00", at(ink(1, 2, 5, 2, -0.2).lineTo()));
    assertEquals(
        List.of(
            "dimension 10.00,80.00 50.00,80.00",
            "dimension-tick 9.29,80.71 10.71,79.29",
            "dimension-tick 49.29,80.71 50.71,79.29"),
        lines(ink(1, 2, 5, 2, 0)));
    // Up the plan, left is to the left.
    assertEquals("2.00,80.00", at(ink(1, 2, 1, 6, 0.8).lineFrom()));
  }

  /** 0.9 mm above the line at its middle, 35, 65, 20 and 80 %; else below: 0.9 + 2.5 mm. */
  @Test
  void measure_standsAboveTheMiddle_orElsewhereAlongTheLine() {
    assertEquals(
        List.of(
            "30.00,71.10",
            "24.00,71.10",
            "36.00,71.10",
            "18.00,71.10",
            "42.00,71.10",
            "30.00,75.40",
            "24.00,75.40",
            "36.00,75.40",
            "18.00,75.40",
            "42.00,75.40"),
        ink(1, 2, 5, 2, 0.8).texts().stream().map(t -> at(t.at())).toList());
    Ink.Text up = ink(1, 2, 1, 6, 0.8).texts().get(0);
    assertEquals("1.10,60.00", at(up.at()), "left of a line that runs up at 2 mm");
  }

  /** Read from below or from the right, also where a line leans a little beyond upright. */
  @ParameterizedTest
  @CsvSource({
    "5, 2, 0",
    "1, 6, -90",
    "1, -2, -90",
    "-3, 2, 0",
    "5, 6, -45",
    "5, -2, 45",
    "2, -2, -104.0362",
    "2.2, -2, 73.3008"
  })
  void measure_isTurnedToBeRead(double x, double y, double degrees) {
    assertEquals(degrees, ink(1, 2, x, y, 0.8).texts().get(0).turnDegrees(), 1e-3);
  }

  /**
   * From (1, 2) to (4, 6), 5 m; a metre to the left of it is (−0.8, 0.6), on paper (−8, −6) mm. The
   * gap of 1 mm and the 1.5 mm beyond go the same way.
   */
  @Test
  void slantingWay_hasItsLineBesideIt() {
    DimensionInk ink = ink(1, 2, 4, 6, 1);
    assertEquals(
        List.of(
            "dimension 9.20,79.40 0.80,73.10",
            "dimension 39.20,39.40 30.80,33.10",
            "dimension 2.00,74.00 32.00,34.00"),
        lines(ink).subList(0, 3));
    assertEquals(3, ink.tracks().size());
    assertEquals("4.00 m", ink.text());
    List<Coordinate> ends = DimensionInk.ends(dimension(1, 2, 4, 6, 1));
    assertEquals(0, ends.get(2).distance(new Coordinate(0.2, 2.6)), 1e-9);
    assertEquals(0, ends.get(3).distance(new Coordinate(3.2, 6.6)), 1e-9);
  }

  /** On the way itself there is nothing to extend. */
  @Test
  void lineOnTheWay_hasNoExtensions() {
    assertEquals(1, ink(1, 2, 5, 2, 0).tracks().size());
  }
}
