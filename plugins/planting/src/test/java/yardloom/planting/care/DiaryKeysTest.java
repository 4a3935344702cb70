package yardloom.planting.care;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import yardloom.kernel.diary.DiaryEntry;
import yardloom.kernel.scope.BedScope;
import yardloom.kernel.unit.Length;
import yardloom.planting.PlantYard;
import yardloom.planting.placing.NextWords;

/** Keys of calendar entries stay when a plan is edited (RFC 5545, 3.8.4.7: a persistent name). */
class DiaryKeysTest {
  private static final List<String> KINDS =
      List.of("asparagus", "kale", "pea", "rhubarb", "sage", "thyme", "tomato", "zucchini");
  private static final List<String> DAYS =
      List.of("2026-03-27", "2026-04-14", "2026-05-06", "2026-07-02");

  private static List<String> keys(PlantYard yard) {
    return yard.outcome().results().all(DiaryEntry.FACT).stream().map(DiaryEntry::key).toList();
  }

  /** A yard of some kinds, each in a bed of its own and planted on a day of its own. */
  private static PlantYard yard(List<Integer> kinds) {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-15");
    for (int i = 0; i < kinds.size(); i++) {
      String kind = KINDS.get(kinds.get(i));
      yard.planted(yard.bed("bed " + i, 10 * i, 0, 6, 9), kind, 2);
      if (kinds.indexOf(kinds.get(i)) == i) {
        yard.plantedOn(kind, DAYS.get(kinds.get(i) % DAYS.size()));
      }
    }
    return yard;
  }

  @Property(tries = 40)
  void anotherBed_leavesTheKeysOfOthersAlone(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    List<Integer> kinds = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      kinds.add(random.nextInt(KINDS.size()));
    }
    Set<String> before = new TreeSet<>(keys(yard(kinds)));
    // In front of the others or behind them.
    kinds.add(random.nextBoolean() ? 0 : kinds.size(), random.nextInt(KINDS.size()));
    Set<String> after = new TreeSet<>(keys(yard(kinds)));
    before.removeAll(after);
    assertEquals(Set.of(), before);
  }

  @Property(tries = 20)
  void keys_areDifferent(@ForAll @IntRange(max = 1_000_000) int seed) {
    Random random = new Random(seed);
    List<Integer> kinds = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      kinds.add(random.nextInt(KINDS.size()));
    }
    List<String> keys = keys(yard(kinds));
    assertEquals(keys.size(), new TreeSet<>(keys).size(), keys::toString);
  }

  /** Pea of 30 March and kale of 2 April: each has its own, and kale keeps it a week later. */
  @Test
  void planting_isNamedByItsKind_notByItsVisit() {
    for (String day : List.of("2026-04-02", "2026-04-09")) {
      PlantYard yard = PlantYard.us("2026-03-01");
      yard.frost("04-20", "10-15");
      yard.planted(yard.bed("a", 0, 0, 6, 9), "pea", 1);
      yard.planted(yard.bed("b", 10, 0, 6, 9), "kale", 2);
      yard.plantedOn("pea", "2026-03-30");
      yard.plantedOn("kale", day);
      assertTrue(keys(yard).contains("plant-kale-2026"), keys(yard)::toString);
      assertTrue(keys(yard).contains("plant-pea-2026"));
    }
  }

  /** Two beds of one round on the same days are one entry; on another day another. */
  @Test
  void rounds_haveKeysOfTheirOwn() {
    PlantYard yard = PlantYard.us("2026-03-01");
    yard.frost("04-20", "10-15");
    for (int i = 0; i < 3; i++) {
      BedScope bed = yard.bed("bed " + i, 10 * i, 0, 6, 9);
      yard.planted(bed, "pea", 1);
      String on = i == 2 ? "06-20" : null;
      NextWords.plantNext(bed, "pole bean", "pea", on, null, Length.feet(1), null, null, null);
    }
    List<String> round =
        keys(yard).stream()
            .filter(k -> k.startsWith("pole-bean") && k.endsWith("-2026"))
            .sorted()
            .collect(Collectors.toList());
    assertEquals(List.of("pole-bean-after-pea-2026", "pole-bean-on-06-20-after-pea-2026"), round);
    List<String> keys = keys(yard);
    assertEquals(keys.size(), new TreeSet<>(keys).size(), keys::toString);
  }
}
