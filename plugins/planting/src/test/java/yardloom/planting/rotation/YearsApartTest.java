package yardloom.planting.rotation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Two years of unrelated vegetables between related ones (Cornell Cooperative Extension, 2021). */
class YearsApartTest {
  /** Four families on four plots go round; the first is back on its plot in year 5. */
  @Test
  void fourFamilies_goRound() {
    List<int[]> years = YearsApart.of(sets(List.of("A", "B", "C", "D")), 5);
    assertArrayEquals(new int[] {0, 1, 2, 3}, years.get(0));
    assertArrayEquals(new int[] {1, 2, 3, 0}, years.get(1));
    assertArrayEquals(new int[] {2, 3, 0, 1}, years.get(2));
    for (int year = 0; year < 5; year++) {
      assertEquals(0, early(List.of("A", "B", "C", "D"), years, year));
    }
  }

  /** Two kinds of one family of four: round in one direction B would follow A; it is avoided. */
  @Test
  void relatives_areKeptApartWhereThereIsRoom() {
    List<String> families = List.of("A", "A", "B", "C", "D", "E");
    List<int[]> years = YearsApart.of(sets(families), 4);
    for (int year = 0; year < 4; year++) {
      assertEquals(0, early(families, years, year), "year " + (year + 1));
    }
  }

  /** Half of the ground is of one family: it cannot stay away for two years. */
  @Test
  void familyThatFillsTheGround_isBackTooSoon() {
    List<String> families = List.of("A", "A", "B", "C");
    List<int[]> years = YearsApart.of(sets(families), 3);
    assertEquals(0, early(families, years, 1));
    assertTrue(early(families, years, 2) > 0);
  }

  @Property(tries = 100)
  void everyKind_hasOnePlotInEachYear(
      @ForAll @Size(min = 1, max = 10) List<@IntRange(min = 0, max = 4) Integer> kinds,
      @ForAll @IntRange(min = 1, max = 6) int count) {
    List<String> families = kinds.stream().map(k -> "F" + k).toList();
    List<int[]> years = YearsApart.of(sets(families), count);
    assertEquals(count, years.size());
    for (int[] year : years) {
      int[] sorted = year.clone();
      Arrays.sort(sorted);
      for (int i = 0; i < sorted.length; i++) {
        assertEquals(i, sorted[i]);
      }
    }
    // A round of three or more different families never returns early.
    if (families.stream().distinct().count() == families.size() && families.size() >= 3) {
      List<Integer> counts = new ArrayList<>();
      for (int year = 0; year < count; year++) {
        counts.add(early(families, years, year));
      }
      assertFalse(counts.stream().anyMatch(c -> c > 0), counts.toString());
    }
  }

  private static List<Set<String>> sets(List<String> families) {
    return families.stream().map(Set::of).toList();
  }

  /** B and C on one plot in a year: neither comes back there with the other for two years. */
  @Test
  void cropsThatFollowEachOther_moveTogether() {
    List<Set<String>> families = List.of(Set.of("A"), Set.of("B", "C"), Set.of("C", "D"));
    int[] second = YearsApart.of(families, 2).get(1);
    // Of the two ways round only the one that keeps C off both its plots would do: there is none,
    // so one early return is counted.
    int early = 0;
    List<int[]> years = List.of(new int[] {0, 1, 2}, second);
    for (int plot = 0; plot < 3; plot++) {
      early += YearsApart.isEarly(families, years, 1, plot, second[plot]) ? 1 : 0;
    }
    assertEquals(1, early);
  }

  private static int early(List<String> families, List<int[]> years, int year) {
    int early = 0;
    for (int plot = 0; plot < families.size(); plot++) {
      early += YearsApart.isEarly(sets(families), years, year, plot, years.get(year)[plot]) ? 1 : 0;
    }
    return early;
  }
}
