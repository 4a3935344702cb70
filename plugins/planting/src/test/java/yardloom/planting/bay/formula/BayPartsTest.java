package yardloom.planting.bay.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yardloom.kernel.unit.Length;

/** Parts of compost bins against published lists of materials. */
class BayPartsTest {
  private static BayParts of(double lengthFt, double depthFt, double heightFt) {
    return BayParts.of(Length.feet(lengthFt), Length.feet(depthFt), Length.feet(heightFt));
  }

  /**
   * Pierce County, Washington, three-bin compost system (read): 9 × 3 × 3 ft, front slats from 6
   * boards of 8 ft, three each, 18; mesh for back and dividers from a roll of 25 ft: 9 + 4 × 3 =
   * 21.
   */
  @Test
  void threeBins_areThoseOfTheCounty() {
    BayParts parts = of(9, 3, 3);
    assertEquals(3, parts.bins());
    assertEquals(18, parts.boards());
    assertEquals(21, parts.mesh().feet(), 1e-9);
    assertTrue(parts.mesh().times(1.1).feet() < 25);
  }

  /**
   * An allotment page (read): two bins 3 ft wide have 6 posts. A book: one of 3 ft 9 ft of wire.
   */
  @ParameterizedTest(name = "{0} × {1} ft")
  @CsvSource({"6, 3, 2, 6, 15", "3, 3, 1, 4, 9", "8, 4, 2, 6, 20", "2, 5, 1, 4, 12"})
  void posts_standAtTheCornersOfEachBin(
      double length, double depth, int bins, int posts, double meshFt) {
    BayParts parts = of(length, depth, 4);
    assertEquals(bins, parts.bins());
    assertEquals(posts, parts.posts());
    assertEquals(meshFt, parts.mesh().feet(), 1e-9);
    assertEquals(length / bins, parts.board().feet(), 1e-9);
  }

  /** Boards are 5.5 in: eight in 4 ft, 44 in. */
  @Test
  void boards_areWholeOnes() {
    assertEquals(16, of(8, 4, 4).boards());
  }

  /** Boards that fill the height to the inch count: n boards are n × 5.5 in. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11})
  void boards_ofTheWholeHeight_count(int boards) {
    Length height = Length.inches(5.5 * boards);
    assertEquals(boards, BayParts.of(Length.feet(3), Length.feet(3), height).boards());
  }
}
