package yardloom.materials.goods;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.PlanKit;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.unit.UnitSystem;

/** What the words about hard goods refuse, and how they say so in plans of either system. */
class HardWordsTest {
  private static final Line ROW = Line.through(List.of(Point.metres(0, 0), Point.metres(9, 0)));

  /** Says the word with this length in a plan of these units; the other arguments are left out. */
  private static void say(String word, UnitSystem units, Length length) {
    PlanKit kit = new PlanKit(units);
    var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
    switch (word) {
      case "stock" -> HardWords.frame(bed, "2x10", length, null, null, null);
      case "also" -> HardWords.frame(bed, "2x10", null, List.of(length), null, null);
      case "kerf" -> HardWords.frame(bed, "2x10", null, null, length, null);
      case "piece" -> HardWords.edging(bed, "steel strip", length);
      case "apart" -> HardWords.trellis(kit.words(), "grapes", ROW, length, null, null, null);
      case "post" -> HardWords.trellis(kit.words(), "grapes", ROW, null, null, length, null);
      case "paver" -> pavers(kit, length, null);
      default -> pavers(kit, null, length);
    }
  }

  private static void pavers(PlanKit kit, Length length, Length width) {
    HardWords.pavers(
        kit.words(), "terrace", PlanKit.box(0, 0, 9, 9), length, width, null, null, null);
  }

  private static Length length(String text) {
    String[] parts = text.split(" ");
    return Length.metres(Unit.byWord(parts[1]).orElseThrow().toSi(Double.parseDouble(parts[0])));
  }

  /**
   * Every limit that a message names is taken at its word in both systems, and what lies clearly
   * beyond either is refused; the plan's own system stands first.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stock | 2 ft, 40 ft, 0.6 m, 12.2 m | 0.59 m, 12.21 m | 2 to 40 ft | 0.6 to 12.2 m",
        "also  | 2 ft, 40 ft, 0.6 m, 12.2 m | 0.59 m, 12.21 m | 2 to 40 ft | 0.6 to 12.2 m",
        "kerf  | 0 in, 1 in, 0 mm, 25 mm | -1 mm, 26 mm | 0 to 1 in | 0 to 25 mm",
        "piece | 2 in, 330 ft, 5 cm, 100 m | 4.9 cm, 331 ft | 2 in to 330 ft | 5 cm to 100 m",
        "apart | 2 ft, 30 ft, 0.6 m, 9.2 m | 0.59 m, 9.21 m | 2 to 30 ft | 0.6 to 9.2 m",
        "post  | 3 ft, 16 ft, 0.9 m, 4.9 m | 0.89 m, 4.91 m | 3 to 16 ft | 0.9 to 4.9 m",
        "paver | 1 in, 2.5 cm, 9 m | 2.4 cm, 0 in | 1 in | 2.5 cm",
        "side  | 1 in, 2.5 cm, 9 m | 2.4 cm, 0 in | 1 in | 2.5 cm",
      })
  void limits_holdAsTheyAreSaid_theUnitsOfThePlanFirst(
      String word, String taken, String refused, String us, String metric) {
    for (String each : taken.split(", ")) {
      assertDoesNotThrow(() -> say(word, UnitSystem.US, length(each)), each);
      assertDoesNotThrow(() -> say(word, UnitSystem.METRIC, length(each)), each);
    }
    for (String each : refused.split(", ")) {
      assertSays(word, UnitSystem.US, each, us + " (" + metric + ")");
      assertSays(word, UnitSystem.METRIC, each, metric + " (" + us + ")");
    }
  }

  private static void assertSays(String word, UnitSystem units, String length, String part) {
    PlanException e = assertThrows(PlanException.class, () -> say(word, units, length(length)));
    assertEquals(ProblemCode.OUT_OF_RANGE, e.problems().get(0).code());
    assertTrue(e.getMessage().contains(part), e.getMessage());
  }

  @Test
  void listOfOtherThingsThanLengths_isRefusedWithLengthsOfThePlan() {
    for (UnitSystem units : UnitSystem.values()) {
      var bed = new PlanKit(units).bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
      PlanException e =
          assertThrows(
              PlanException.class,
              () -> HardWords.frame(bed, "2x10", null, List.of(10), null, null));
      String first = units == UnitSystem.US ? "[10.ft, 12.ft] (" : "[3.m, 3.6.m] (";
      assertTrue(e.getMessage().contains(first), e.getMessage());
    }
  }

  /** Names stand on bills, sheets and labels: 60 letters of one line, as all names. */
  @Test
  void namesThatAreNoLine_areRefused() {
    for (String bad : List.of("", " a", "a\nb", "a\u202eb", "x".repeat(61))) {
      PlanKit kit = PlanKit.us();
      var bed = kit.bed("a", BedUse.ANNUAL, PlanKit.box(0, 0, 8, 4));
      assertThrows(PlanException.class, () -> HardWords.edging(bed, bad, null));
      assertThrows(
          PlanException.class, () -> HardWords.trellis(kit.words(), bad, ROW, null, 1, null, null));
      assertThrows(
          PlanException.class,
          () ->
              HardWords.pavers(
                  kit.words(), bad, PlanKit.box(0, 0, 9, 9), null, null, null, null, null));
    }
  }
}
