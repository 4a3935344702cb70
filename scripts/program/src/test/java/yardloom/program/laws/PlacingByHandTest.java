package yardloom.program.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.YardFacts;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Table;

/** From plan text to the printed planting tables, for plants whose lines say where they stand. */
class PlacingByHandTest {
  private static final String YARD =
      """
      plan 'Placing by hand', units: 'us', date: '2027-04-12'
      site 'Urbana', latitude: 40.11.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      climate 'urbana-il'
      frost last: '05-06', first: '10-14', source: 'by hand'
      lot([point(0.ft, 0.ft), point(70.ft, 0.ft), point(70.ft, 50.ft), point(0.ft, 50.ft)])
      tree('apple', point(16.ft, 10.ft), crown: 13.ft, height: 12.ft) { species 'apple (semi-dwarf)' }
      bed('guild', rect(4.ft, 4.ft, 24.ft, 12.ft), use: 'perennial') {
        plantRing 'chives', round: '%s', radius: %s, count: 8
        plantRow 'sage', along: line([point(6.ft, 5.5.ft), point(6.ft, 14.5.ft)]), spacing: 2.ft
        plantDrift 'thyme', about: point(24.ft, 10.ft), count: 7, spacing: 1.ft
      }
      bed('meadow', rect(34.ft, 4.ft, 10.ft, 6.ft), use: 'perennial') {
        plantMix 'garden strawberry', share: 0.7
        plantMix 'chives'%s
      }
      bed('dense', rect(34.ft, 20.ft, 24.ft, 8.ft), use: 'perennial') {
        plant 'red currant', spacing: 2.ft, rowSpacing: 2.ft
        plantThinned 'red currant', to: 4.ft, season: 3
      }
      bed('ring', rect(8.ft, 32.ft, 8.ft, 8.ft), use: 'perennial') { plant 'sorrel', spacing: 2.ft }
      tree 'plum', point(12.ft, 36.ft), crown: 10.ft, height: 10.ft, trunk: 6.inch, standing: true
      """;

  private static final Drawn DRAWN = Drawn.of(YARD.formatted("apple", "3.ft", ""));

  private static String count(Drawn drawn, String bed, String plant) {
    Table table = drawn.tables().get("planting");
    List<Cell> row =
        table.rows().stream()
            .filter(r -> r.get(0).value().orElseThrow().equals(bed))
            .filter(r -> r.get(1).value().orElseThrow().equals(plant))
            .findFirst()
            .orElseThrow();
    return drawn.format().plain(table.columns().get(3), row.get(3));
  }

  /**
   * Eight round the apple, 3 ft from it and well inside; a row of 9 ft takes four at 2 ft (4.5
   * rounded down); a group of seven.
   *
   * <p>The mix stands at the wider spacing of its kinds, strawberries at 15 in, rows 15 √3 / 2 = 13
   * in apart: (120 − 15) / 15 + 1 = 8 and 7 in turn, (72 − 15) / 13 + 1 = 5 rows, 8 + 7 + 8 + 7 + 8
   * = 38, of which 0.7 are 26.6.
   *
   * <p>Currants at 2 ft in 24 by 8 ft: 12 × 4 = 48. Sorrel at 2 ft in 8 by 8 ft: 4 × 4 = 16, of
   * which the nearest to the plum stand 1.41 ft from it: more than a foot, and than half of their 1
   * ft. None of them goes.
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "guild, chives, 8",
    "guild, sage, 4",
    "guild, thyme, 7",
    "meadow, garden strawberry, 27",
    "meadow, chives, 11",
    "dense, red currant, 48",
    "ring, sorrel, 16"
  })
  void plants_standWhereTheirLinesSay(String bed, String plant, String count) {
    assertEquals(count, count(DRAWN, bed, plant));
  }

  /** Every second of 12 in each second of 4 rows stays: 6 × 2 = 12, 4 ft apart. */
  @Test
  void densePlanting_isThinnedInBothDirections() {
    assertEquals("48", DRAWN.printed("thinning", "dense", "planted"));
    assertEquals("12", DRAWN.printed("thinning", "dense", "stay"));
    // 60 and 21 days before 6 May of the third season, 2029.
    assertEquals("2029-03-07", DRAWN.printed("care", "Thin out dense", "from"));
    assertEquals("2029-04-15", DRAWN.printed("care", "Thin out dense", "until"));
    assertTrue(DRAWN.printed("care", "Thin out dense", "how").startsWith("36 of 48 go, 12 stay"));
    assertTrue(
        DRAWN.outcome().findings().stream()
            .noneMatch(f -> f.rule().equals("planting.room") && f.text().contains("currant")));
  }

  /** A plant within a foot of a stem is none: the lattice of nine has its middle on the plum. */
  @Test
  void plants_keepOffStems() {
    Drawn drawn =
        Drawn.of(
            YARD.formatted("apple", "3.ft", "").replace("spacing: 2.ft }", "spacing: 32.inch }"));
    assertEquals("8", count(drawn, "ring", "sorrel"));
  }

  /** At 7 ft from (16, 10), only the two on the long axis lie in the bed, which is 12 ft wide. */
  @Test
  void ringThatLeavesItsBed_isCountedAsItStands_andSaid() {
    Drawn drawn = Drawn.of(YARD.formatted("apple", "7.ft", ""));
    // (16 ± 7, 10), and the four diagonals at 10 ± 4.95: 14.95 and 5.05 lie in 4 to 16 ft.
    assertEquals("6", count(drawn, "guild", "chives"));
    assertTrue(
        drawn.outcome().findings().stream()
            .anyMatch(f -> f.text().contains("of 8 chives only 6 find room")));
  }

  @Test
  void ringRoundNoTree_andMixOfTooMany_areRefused() {
    PlanException noTree =
        assertThrows(PlanException.class, () -> Drawn.of(YARD.formatted("aple", "3.ft", "")));
    assertTrue(noTree.getMessage().contains("there is no tree 'aple'"), noTree.getMessage());
    PlanException tooMany =
        assertThrows(
            PlanException.class, () -> Drawn.of(YARD.formatted("apple", "3.ft", ", share: 0.4")));
    assertTrue(tooMany.getMessage().contains("more plants than the 38"), tooMany.getMessage());
  }

  private static final String ROWS =
      """
      plan 'Tall and low', units: 'us'
      site 'place', latitude: %s.deg, longitude: -88.21.deg, zone: 'America/Chicago'%s
      lot([point(0.ft, 0.ft), point(30.ft, 0.ft), point(30.ft, 40.ft), point(0.ft, 40.ft)])
      bed('row', rect(10.ft, 5.ft, 4.ft, 30.ft), use: 'annual') { plant '%s' ; plant '%s'%s }
      """;

  private static final String KEPT = " ; keepOrder 'as agreed'";

  /**
   * Kinds follow along the bed from its south end. Tomatoes grow 36 to 72 in, so 4.5 ft, lettuce 6
   * to 12 in: the shadow at noon falls north, and south of the equator south. Where the lines would
   * have the lettuce in it, the tomatoes have the other half of the bed, and that is said; a plan
   * that keeps its order has it, and its reason stands for the note.
   */
  @ParameterizedTest(name = "{0}°, {2} then {3}: {4}")
  @CsvSource({
    "40, '', tomato, lettuce, true",
    "40, '', lettuce, tomato, false",
    "-40, '', tomato, lettuce, false",
    "-40, '', lettuce, tomato, true",
    "40, ', north: 180.deg', lettuce, tomato, true",
    "40, ', north: 90.deg', tomato, lettuce, false",
  })
  void tallKinds_haveTheSideOfThePole(
      String latitude, String north, String first, String second, boolean turned) {
    Drawn drawn = Drawn.of(ROWS.formatted(latitude, north, first, second, ""));
    assertEquals(turned, finds(drawn, "planting.by-height"));
    assertFalse(finds(drawn, "planting.tall-side"));
    // The bed's middle is 20 ft from the lot's south side.
    double sign = turned ? -1 : 1;
    assertTrue(sign * (middleFt(drawn, second) - 20) > 5, () -> second + middleFt(drawn, second));
    assertTrue(sign * (middleFt(drawn, first) - 20) < -5, () -> first + middleFt(drawn, first));
    Drawn kept = Drawn.of(ROWS.formatted(latitude, north, first, second, KEPT));
    assertFalse(finds(kept, "planting.by-height") || finds(kept, "planting.tall-side"));
    assertTrue(middleFt(kept, first) < 15 && middleFt(kept, second) > 25);
  }

  private static final String MIXED =
      """
      plan 'Tall and low, mixed', units: 'us'
      site 'place', latitude: %s.deg, longitude: -88.21.deg, zone: 'America/Chicago'
      lot([point(0.ft, 0.ft), point(30.ft, 0.ft), point(30.ft, 40.ft), point(0.ft, 40.ft)])
      bed('mix', rect(10.ft, 5.ft, 8.ft, 6.ft), use: 'annual') { plantMix 'lettuce' ; plantMix 'tomato', count: 5 }
      """;

  /**
   * At the 21 in of tomatoes, rows 21 √3 / 2 = 18.2 in apart: (96 − 21) / 21 + 1 = 4 in a row, the
   * shifted ones too (73.5 of 75 in), and (72 − 21) / 18.2 + 1 = 3 rows, so 12: the five tomatoes
   * have the row at the pole and one place of the middle row, seven lettuce the rest. Middles of
   * rows are 8 ft and 8 ± 1.52 ft from the south.
   */
  @ParameterizedTest
  @CsvSource({"40, 9.21, 7.14", "-40, 6.79, 8.86"})
  void tallKindsOfAMix_haveThePlacesNearestThePole(
      String latitude, double tomatoesFt, double lettuceFt) {
    Drawn drawn = Drawn.of(MIXED.formatted(latitude));
    assertEquals("5", count(drawn, "mix", "tomato"));
    assertEquals("7", count(drawn, "mix", "lettuce"));
    // (4 × 9.516 + 8) / 5 and (4 × 6.484 + 3 × 8) / 7.
    assertEquals(tomatoesFt, middleFt(drawn, "tomato"), 0.01);
    assertEquals(lettuceFt, middleFt(drawn, "lettuce"), 0.01);
    assertFalse(finds(drawn, "planting.tall-side"));
  }

  /** Where all is of one height, every part of the bed has both kinds. */
  @Test
  void lowKindsOfAMix_standAmongEachOther() {
    Drawn drawn = Drawn.of(MIXED.formatted("40").replace("tomato", "chives"));
    assertEquals(8, middleFt(drawn, "chives"), 0.6);
    assertEquals(8, middleFt(drawn, "lettuce"), 0.6);
  }

  /** The mean distance of a kind's plants from the lot's south side. */
  private static double middleFt(Drawn drawn, String kind) {
    return drawn.outcome().results().all(YardFacts.STANDS).stream()
        .filter(s -> s.kind().plant().equals(kind))
        .flatMap(s -> s.placed().at().stream())
        .mapToDouble(p -> p.y().feet())
        .average()
        .orElseThrow();
  }

  private static boolean finds(Drawn drawn, String rule) {
    return drawn.outcome().findings().stream().anyMatch(f -> f.rule().equals(rule));
  }

  @Test
  void orderIsKeptForAReason() {
    for (String word : List.of(" ; keepOrder ' '", KEPT + KEPT)) {
      String script = ROWS.formatted("40", "", "tomato", "lettuce", word);
      assertThrows(PlanException.class, () -> Drawn.of(script));
    }
  }

  /** A share of all leaves nothing for a kind that has none of its own; its line is named. */
  @Test
  void mixThatLeavesNothingForAKind_isRefusedAtItsLine() {
    String script = MIXED.formatted("40").replace("'lettuce'", "'chives', share: 1");
    PlanException e =
        assertThrows(PlanException.class, () -> Drawn.of(script.replace(", count: 5", "")));
    assertTrue(e.getMessage().contains("leave no place for 'tomato'"), e.getMessage());
    assertEquals(4, e.problems().get(0).place().line());
  }
}
