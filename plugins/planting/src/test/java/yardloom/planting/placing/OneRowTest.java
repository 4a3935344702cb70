package yardloom.planting.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;

/** A bed too narrow for a lattice holds one row, where nothing else stands in it. */
class OneRowTest {
  private final PlantYard yard = PlantYard.us("");

  private List<String> feet() {
    return yard
        .outcome()
        .results()
        .find(PlantPlaces.KEY)
        .orElseThrow()
        .plantings()
        .get(0)
        .at()
        .stream()
        .map(p -> String.format("%.2f %.2f", p.x().feet(), p.y().feet()))
        .sorted()
        .toList();
  }

  /**
   * Currants 4 ft apart (48 to 60 in, Iowa State University Extension, as the catalogue cites it)
   * in a bed of 20 by 3.5 ft at (2, 5) ft: one row at 5 + 1.75 = 6.75 ft, five of them at 4, 8, 12,
   * 16 and 20 ft; 21.5 ft hold five too, the row moved by 0.75 ft.
   */
  @ParameterizedTest
  @CsvSource({
    "20, '4.00 6.75;8.00 6.75;12.00 6.75;16.00 6.75;20.00 6.75'",
    "21.5, '4.75 6.75;8.75 6.75;12.75 6.75;16.75 6.75;20.75 6.75'"
  })
  void narrowBed_holdsOneRow(double lengthFt, String places) {
    yard.planted(yard.bed("currants", 2, 5, lengthFt, 3.5), "red currant", 4);
    assertEquals(List.of(places.split(";")).stream().sorted().toList(), feet());
    assertTrue(
        yard.outcome().findings().stream().noneMatch(f -> f.text().contains("fits: its part")));
  }

  /** Half of 4 ft wide is the least: at 1.9 ft none stands, at 2 ft all five. */
  @ParameterizedTest
  @CsvSource({"1.9, 0", "2, 5"})
  void row_needsHalfItsSpacing(double wideFt, int count) {
    yard.planted(yard.bed("currants", 2, 5, 20, wideFt), "red currant", 4);
    assertEquals(count, feet().size());
    assertEquals(
        count == 0,
        yard.outcome().findings().stream()
            .anyMatch(f -> f.text().startsWith("no red currant fits: its part of the bed")));
  }

  /** Beside another kind none stands at the edge of its part: half of 20 ft by 3.5 ft is no row. */
  @Test
  void partOfABed_holdsNoRow() {
    BedScope bed = yard.bed("both", 2, 5, 20, 3.5);
    yard.planted(bed, "red currant", 4);
    yard.planted(bed, "sage", 2);
    assertEquals(List.of(), feet());
  }

  /** A row as drawn, from 2 to 22 ft, stands too. */
  @Test
  void plantRow_standsInANarrowBed() {
    BedScope bed = yard.bed("currants", 2, 5, 20, 3.5);
    Line line =
        Line.between(
            new Point(Length.feet(2), Length.feet(6.75)),
            new Point(Length.feet(22), Length.feet(6.75)));
    PlacingWords.plantRow(bed, "red currant", line, Length.feet(4), null);
    assertEquals(
        List.of("12.00 6.75", "16.00 6.75", "20.00 6.75", "4.00 6.75", "8.00 6.75"), feet());
  }
}
