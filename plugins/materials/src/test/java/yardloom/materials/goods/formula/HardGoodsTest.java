package yardloom.materials.goods.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Length;
import yardloom.materials.cutting.CuttingStock;
import yardloom.materials.cutting.CuttingStock.CutList;
import yardloom.materials.cutting.CuttingStock.Demand;
import yardloom.materials.cutting.CuttingStock.Pattern;
import yardloom.materials.goods.formula.Pavers.Traffic;

/** Soil checks L01 to L12. */
class HardGoodsTest {
  private static final long INCH = 25_400_000;
  private static final long EIGHTH = INCH / 8;

  @ParameterizedTest
  @CsvSource({
    // L01
    "2x4, 1.5, 3.5",
    "2x6, 1.5, 5.5",
    "2x8, 1.5, 7.25",
    "2x10, 1.5, 9.25",
    "2x12, 1.5, 11.25",
    "4x4, 3.5, 3.5",
    "1x6, 0.75, 5.5"
  })
  void lumber_dressedSizes_matchTables(String name, double thickness, double width) {
    Lumber.Size size = Lumber.size(name);
    assertEquals(thickness, size.thickness().inches(), 1e-9);
    assertEquals(width, size.width().inches(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // L02, L03
    "1x8, 12, 8.0",
    "1x6, 10, 5.0",
    "1x8, 8, 5.3333"
  })
  void boardFeet_ofNominalSize_matchChart(String size, double feet, double expected) {
    assertEquals(expected, Lumber.size(size).boardFeet(Length.feet(feet)), 0.001);
  }

  @Test
  void boardFeet_framing_countNominalInches() {
    // L04; L05 and trap 7: by dressed size 0.6875, which is not the trade's board foot.
    assertEquals(1.0, Lumber.size("2x6").boardFeet(Length.feet(1)), 1e-12);
    assertEquals(8.0, Lumber.size("2x6").boardFeet(Length.feet(8)), 1e-12);
    assertNotEquals(0.6875, Lumber.size("2x6").boardFeet(Length.feet(1)), 0.3);
  }

  @Test
  void lumber_unknownSize_suggestsTheNearest() {
    PlanException e = assertThrows(PlanException.class, () -> Lumber.size("2x5"));
    assertTrue(e.getMessage().contains("Did you mean"), e.getMessage());
  }

  private static List<Demand> demands(long unit, int... widthsAndCounts) {
    List<Demand> demands = new ArrayList<>();
    for (int i = 0; i < widthsAndCounts.length; i += 2) {
      demands.add(new Demand("p" + i, widthsAndCounts[i] * unit, widthsAndCounts[i + 1]));
    }
    return demands;
  }

  @Test
  void cutting_publishedModel_reachesItsOptimum() {
    // L06: GAMS model library, cutstock: 453 (bound 452.25).
    CutList list = CuttingStock.solve(List.of(100L), 0, demands(1, 45, 97, 36, 610, 31, 395, 14, 211));
    assertEquals(453, list.boards());
    assertEquals(452.25, list.bound(), 1e-6);
    assertTrue(list.proven());
  }

  @Test
  void cutting_zeroWasteList_needsAFifthBoardForKerf() {
    // L07, L08 and trap 13.
    List<Demand> list = demands(INCH, 48, 4, 36, 4, 24, 2);
    assertEquals(4, CuttingStock.solve(List.of(96 * INCH), 0, list).boards());
    CutList kerf = CuttingStock.solve(List.of(96 * INCH), EIGHTH, list);
    assertEquals(5, kerf.boards());
    assertTrue(kerf.proven());
  }

  @ParameterizedTest
  @CsvSource({"0", "3175000"})
  void cutting_mixedLengths_needsFive(long kerfNm) {
    // L09
    CutList list =
        CuttingStock.solve(List.of(144 * INCH), kerfNm, demands(INCH, 55, 3, 40, 5, 30, 4, 22, 6));
    assertEquals(5, list.boards());
    assertTrue(list.proven());
  }

  @Test
  void cutting_pieceLongerThanStock_isRefused() {
    assertThrows(
        PlanException.class, () -> CuttingStock.solve(List.of(96 * INCH), EIGHTH, demands(INCH, 97, 1)));
    assertEquals(0, CuttingStock.solve(List.of(96 * INCH), EIGHTH, List.of()).boards());
    assertEquals(1, CuttingStock.solve(List.of(96 * INCH), EIGHTH, demands(INCH, 96, 1)).boards());
  }

  @Property(tries = 150, seed = "20261125")
  void cutting_smallCases_matchExhaustiveSearch(
      @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 12, max = 90) Integer> inches,
      @ForAll @IntRange(min = 0, max = 1) int kerf) {
    List<Demand> list = new ArrayList<>();
    inches.forEach(i -> list.add(new Demand("p", i * INCH, 1)));
    CutList cut = CuttingStock.solve(List.of(96 * INCH), kerf * EIGHTH, list);
    long[] sizes = inches.stream().mapToLong(i -> i * INCH + kerf * EIGHTH).toArray();
    int least = fewest(sizes, 0, new long[sizes.length], 0, 96 * INCH + kerf * EIGHTH, 99);
    assertEquals(least, cut.boards());
    assertTrue(cut.proven());
    requireValid(cut, list, 96 * INCH, kerf * EIGHTH);
  }

  @Property(tries = 100, seed = "20261125")
  void cutting_severalStocks_matchExhaustiveSearchAndStayAboveTheBound(
      @ForAll @Size(min = 1, max = 6) List<@IntRange(min = 12, max = 96) Integer> inches,
      @ForAll @IntRange(min = 0, max = 1) int kerf) {
    List<Demand> list = new ArrayList<>();
    inches.forEach(i -> list.add(new Demand("p", i * INCH, 1)));
    List<Long> stocks = List.of(144 * INCH, 96 * INCH, 120 * INCH);
    CutList cut = CuttingStock.solve(stocks, kerf * EIGHTH, list);
    long[] sizes = inches.stream().mapToLong(i -> i * INCH + kerf * EIGHTH).toArray();
    assertEquals(shortest(sizes, 0, new long[sizes.length], 0, kerf * EIGHTH), cut.lengthNm());
    assertTrue(cut.proven());
    assertTrue(cut.lengthNm() >= cut.bound() * cut.measureNm() - 1);
    requireValid(cut, list, 144 * INCH, kerf * EIGHTH);
    // One more length on offer never makes the list dearer.
    assertTrue(cut.lengthNm() <= CuttingStock.solve(List.of(144 * INCH), kerf * EIGHTH, list).lengthNm());
  }

  @Test
  void cutting_twoStocks_buyTheShortBoardForTheRest() {
    // By hand: 8 ft and 12 ft boards for one piece of 12 ft and one of 7 ft: 20 ft, not 24.
    List<Demand> list = demands(INCH, 144, 1, 84, 1);
    CutList cut = CuttingStock.solve(List.of(96 * INCH, 144 * INCH), EIGHTH, list);
    assertEquals(240 * INCH, cut.lengthNm());
    assertEquals(2, cut.boards());
    assertThrows(
        PlanException.class,
        () -> CuttingStock.solve(List.of(96 * INCH, 144 * INCH), 0, demands(INCH, 145, 1)));
  }

  /** Tries every board for every piece, then the shortest of 8, 10 and 12 ft for each board. */
  private static long shortest(long[] sizes, int at, long[] used, int boards, long kerf) {
    if (at == sizes.length) {
      long sum = 0;
      for (int b = 0; b < boards; b++) {
        long feet = (used[b] - kerf <= 96 * INCH) ? 96 : (used[b] - kerf <= 120 * INCH) ? 120 : 144;
        sum += feet * INCH;
      }
      return sum;
    }
    long least = Long.MAX_VALUE;
    for (int b = 0; b <= boards && b < sizes.length; b++) {
      if (used[b] + sizes[at] - kerf <= 144 * INCH) {
        used[b] += sizes[at];
        least = Math.min(least, shortest(sizes, at + 1, used, Math.max(boards, b + 1), kerf));
        used[b] -= sizes[at];
      }
    }
    return least;
  }

  @Property(tries = 60, seed = "20261125")
  void cutting_longLists_areValidAndNeverBelowTheBound(
      @ForAll @Size(min = 3, max = 7) List<@IntRange(min = 8, max = 95) Integer> inches,
      @ForAll @IntRange(min = 1, max = 30) int count) {
    List<Demand> list = new ArrayList<>();
    for (int i = 0; i < inches.size(); i++) {
      list.add(new Demand("p" + i, inches.get(i) * INCH, 1 + (count * (i + 3)) % 17));
    }
    CutList cut = CuttingStock.solve(List.of(96 * INCH), EIGHTH, list);
    assertTrue(cut.boards() >= cut.bound() - 1e-6);
    requireValid(cut, list, 96 * INCH, EIGHTH);
  }

  private static void requireValid(CutList cut, List<Demand> list, long stock, long kerf) {
    int[] made = new int[list.size()];
    int boards = 0;
    for (Pattern pattern : cut.patterns()) {
      long used = -kerf;
      for (int i = 0; i < made.length; i++) {
        used += pattern.pieces().get(i) * (list.get(i).lengthNm() + kerf);
        made[i] += pattern.pieces().get(i) * pattern.boards();
      }
      assertTrue(used <= pattern.stockNm() && pattern.stockNm() <= stock, "board overfull");
      boards += pattern.boards();
    }
    assertEquals(cut.boards(), boards);
    for (int i = 0; i < made.length; i++) {
      assertEquals(list.get(i).count(), made[i]);
    }
  }

  /** Tries every board for every piece. */
  private static int fewest(long[] sizes, int at, long[] used, int boards, long room, int best) {
    if (boards >= best) {
      return best;
    }
    if (at == sizes.length) {
      return boards;
    }
    int least = best;
    for (int b = 0; b <= boards && b < sizes.length; b++) {
      if (used[b] + sizes[at] <= room) {
        used[b] += sizes[at];
        least = fewest(sizes, at + 1, used, Math.max(boards, b + 1), room, least);
        used[b] -= sizes[at];
      }
    }
    return least;
  }

  @Test
  void pavers_tenPercentWaste_matchesExample() {
    // L10
    Area ground = Area.squareFeet(100);
    assertEquals(450, Pavers.exact(ground, Length.inches(8), Length.inches(4)), 1e-9);
    assertEquals(495, Pavers.order(ground, Length.inches(8), Length.inches(4), 0.1));
  }

  @Test
  void pavers_layers_matchQuotedPractice() {
    // L11 (second-hand), L12
    assertEquals(4, Traffic.FOOT.base().inches(), 1e-9);
    assertEquals(6, Traffic.DRIVE.base().inches(), 1e-9);
    assertEquals(1, Pavers.BEDDING.inches(), 1e-9);
  }
}
