package yardloom.planting.placing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import yardloom.kernel.check.Finding;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;
import yardloom.planting.rotation.RotationWords;

/** Rings about a tree, mixes, and annuals that change their plots, from word to table. */
class RingsAndTurnsTest {
  private final PlantYard yard = PlantYard.us("");

  private BedScope withApple() {
    BedScope bed = yard.bed("d", 0, 30, 10, 10);
    yard.tree("apple", "apple (semi-dwarf)", 5, 35, 1);
    return bed;
  }

  private String count(String plant) {
    return yard.printed("planting").stream()
        .filter(r -> r.startsWith("d | " + plant + " | "))
        .map(r -> r.split(" \\| ")[3])
        .findFirst()
        .orElseThrow();
  }

  private List<String> found(String rule) {
    return yard.found(rule).stream().map(Finding::text).map(t -> t.replace('\u00a0', ' ')).toList();
  }

  /**
   * The tree stands in the middle of 10 by 10 ft. Eight sage at 4.9 ft: those straight to the sides
   * stand 0.1 ft from the edge, less than half of 18 in; the four at the corners, 3.46 ft either
   * way, have room. Chives at 0.8 ft grow into the stem: they need a foot.
   */
  @Test
  void rings_leaveOutWhatHasNoRoom_andTellWhatGrowsIntoTheStem() {
    BedScope bed = withApple();
    PlacingWords.plantRing(bed, "chives", "apple", Length.feet(0.8), 8, null);
    PlacingWords.plantRing(bed, "sage", "apple", Length.feet(4.9), 8, null);
    assertEquals("8", count("chives"));
    assertEquals("4", count("sage"));
    assertTrue(found("planting.placed").get(0).startsWith("of 8 sage only 4 find room"));
    assertEquals(
        List.of(
            "8 of chives stand 0.8 ft (0.24 m) from the middle of tree \"apple\"; grown, it needs"
                + " 1.0 ft (0.30 m)"),
        found("planting.stems"));
  }

  @Test
  void ringRoundATreeThatIsNotThere_asksForTheNearest() {
    BedScope bed = withApple();
    PlacingWords.plantRing(bed, "chives", "aple", Length.feet(3), 8, null);
    PlanException e = assertThrows(PlanException.class, yard::outcome);
    assertEquals(ProblemCode.UNKNOWN_WORD, e.problems().get(0).code());
    assertTrue(e.getMessage().contains("Did you mean `apple`?"), e.getMessage());
  }

  /** Of all places of the mix 70 % are strawberries, and the thyme has the rest, to the nearest. */
  @Test
  void mix_isDealtByShares() {
    BedScope bed = yard.bed("d", 0, 30, 10, 10);
    PlacingWords.plantMix(bed, "garden strawberry", 0.7, null, null);
    PlacingWords.plantMix(bed, "thyme", null, null, null);
    int berries = Integer.parseInt(count("garden strawberry"));
    int thyme = Integer.parseInt(count("thyme"));
    assertEquals(0.7 * (berries + thyme), berries, 1);
    assertTrue(berries + thyme > 40, berries + " and " + thyme);
  }

  /** Three thyme by count, the rest shared evenly by two. */
  @Test
  void mix_byCount_andTheRestEvenly() {
    BedScope bed = yard.bed("d", 0, 30, 10, 10);
    PlacingWords.plantMix(bed, "thyme", null, 3, null);
    PlacingWords.plantMix(bed, "chives", null, null, null);
    PlacingWords.plantMix(bed, "garden strawberry", null, null, null);
    assertEquals("3", count("thyme"));
    assertEquals(
        Integer.parseInt(count("chives")), Integer.parseInt(count("garden strawberry")), 1);
  }

  @Test
  void mixOfMoreThanFits_isRefused() {
    BedScope bed = yard.bed("d", 0, 30, 4, 4);
    PlacingWords.plantMix(bed, "thyme", null, 300, null);
    PlanException e = assertThrows(PlanException.class, yard::outcome);
    assertTrue(e.getMessage().contains("the mix asks for more plants than the "), e.getMessage());
  }

  /**
   * Four plots of tomato, kale, lettuce and potato over three years: the first year as planted,
   * each kind once in every year. Two of four plots are of one family, which should stay away for
   * two years and cannot: where it is back, the note says so. A bed of two kinds has two plots.
   */
  @Test
  void rotation_movesEachKindOnce_andSaysWhereAFamilyIsBackTooSoon() {
    yard.planted(yard.bed("a", 0, 0, 4, 8), "tomato", 2);
    yard.planted(yard.bed("b", 10, 0, 4, 8), "kale", 2);
    BedScope both = yard.bed("c", 20, 0, 4, 16);
    yard.planted(both, "lettuce", 2);
    yard.planted(both, "potato", 2);
    yard.planted(yard.bed("p", 40, 0, 4, 8), "rhubarb", 3);
    RotationWords.rotation(yard.words(), 3);
    List<List<String>> rows =
        yard.printed("rotation").stream().map(r -> List.of(r.split(" \\| "))).toList();
    assertEquals(
        List.of("a", "b", "c, part 1", "c, part 2"), rows.stream().map(r -> r.get(0)).toList());
    assertEquals(
        List.of(
            "tomato (Solanaceae)",
            "kale (Brassicaceae)",
            "lettuce (Asteraceae)",
            "potato (Solanaceae)"),
        rows.stream().map(r -> r.get(1)).toList());
    List<String> back = new java.util.ArrayList<>();
    for (int year = 2; year <= 3; year++) {
      int column = year;
      assertEquals(4, rows.stream().map(r -> r.get(column)).distinct().count());
      for (List<String> row : rows) {
        boolean again =
            IntStream.range(1, column)
                .anyMatch(before -> family(row.get(before)).equals(family(row.get(column))));
        if (again) {
          back.add(row.get(0) + " in year " + year);
        }
      }
    }
    back.sort(null);
    String note = PlantYard.table(yard.outcome(), "rotation").notes().get(1);
    assertTrue(
        note.startsWith("A family is back too soon on " + String.join(", ", back) + ":"),
        note + back);
  }

  private static String family(String cell) {
    return cell.substring(cell.indexOf('('));
  }
}
