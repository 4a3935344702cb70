package yardloom.kernel.recall;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Attributes;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.UnitSystem;

/** Results whose statements moved from lines 3 and 5 to lines 13 and 18. */
class RelocationTest {
  private record Fact(String said, SourceRef place) {}

  private record Holder(int count, Fact fact, Object rest) {}

  /** Holds a place and is no record. */
  private static final class Box {
    private final Object inside;

    Box(Object inside) {
      this.inside = inside;
    }
  }

  private record Picky(SourceRef place) {
    Picky {
      if (place.line() > 10) {
        throw new IllegalArgumentException("too low");
      }
    }
  }

  private static SourceRef at(int line) {
    return new SourceRef("a.groovy", line, 1);
  }

  private static final Fact THREE = new Fact("three", at(3));
  private static final Fact FIVE = new Fact("five", at(5));
  private static final Fact THIRTEEN = new Fact("three", at(13));
  private static final Fact EIGHTEEN = new Fact("five", at(18));

  private static Moves moves() {
    Moves moves = new Moves();
    assertTrue(moves.pair(at(3), at(13)));
    assertTrue(moves.pair(at(5), at(18)));
    return moves;
  }

  private static <T> T moved(T result) {
    return Relocation.of(result, moves()).orElseThrow();
  }

  private static void stuck(Object result) {
    assertTrue(Relocation.of(result, moves()).isEmpty());
  }

  @Test
  void record_isMadeAnewWithItsPlaces_whatHasNoneStays() {
    assertEquals(new Holder(4, THIRTEEN, EIGHTEEN), moved(new Holder(4, THREE, FIVE)));
    Holder without = new Holder(4, null, List.of("x"));
    assertSame(without, moved(without));
    Fact unmoved = new Fact("none", SourceRef.NONE);
    assertSame(unmoved, moved(unmoved));
    stuck(new Fact("unknown", at(4)));
    stuck(new Picky(at(3)));
  }

  @Test
  void statementThatStayed_leavesItsResultAlone() {
    Moves stayed = new Moves();
    stayed.pair(at(3), new SourceRef("a.groovy", 3, 1));
    assertTrue(stayed.areNone());
    assertSame(THREE, Relocation.of(THREE, stayed).orElseThrow());
  }

  @Test
  void sharedPart_staysShared() {
    Holder both = moved(new Holder(1, THREE, THREE));
    assertSame(both.fact(), both.rest());
  }

  @Test
  void lists_setsAndMaps_keepTheirOrder() {
    assertEquals(List.of(EIGHTEEN, THIRTEEN), moved(List.of(FIVE, THREE)));
    List<String> plain = List.of("a");
    assertSame(plain, moved(plain));
    Set<Fact> set = new LinkedHashSet<>(List.of(FIVE, THREE));
    assertEquals(List.of(EIGHTEEN, THIRTEEN), List.copyOf(moved(Collections.unmodifiableSet(set))));
    Map<String, Fact> map = new LinkedHashMap<>();
    map.put("z", FIVE);
    map.put("a", THREE);
    Map<String, Fact> moved = moved(Collections.unmodifiableMap(map));
    assertEquals(List.of("z", "a"), List.copyOf(moved.keySet()));
    assertEquals(List.of(EIGHTEEN, THIRTEEN), List.copyOf(moved.values()));
    Map<String, Integer> numbers = Map.of("a", 1);
    assertSame(numbers, moved(numbers));
    assertEquals(Map.of(THIRTEEN, 1), moved(Map.of(THREE, 1)), "a key may hold a place");
  }

  @Test
  void sortedOnes_areSortedAsBefore() {
    SortedSet<SourceRef> downward = new TreeSet<>(Comparator.<SourceRef>reverseOrder());
    downward.addAll(List.of(at(3), at(5)));
    SortedSet<SourceRef> set = moved(downward);
    assertEquals(List.of(at(18), at(13)), List.copyOf(set));
    SortedMap<SourceRef, Fact> lines = new TreeMap<>(Comparator.<SourceRef>reverseOrder());
    lines.put(at(3), THREE);
    lines.put(at(5), FIVE);
    SortedMap<SourceRef, Fact> map = moved(lines);
    assertEquals(List.of(EIGHTEEN, THIRTEEN), List.copyOf(map.values()));
    assertEquals(at(18), map.firstKey());
  }

  @Test
  void optionalsAndAttributes_areLookedInto() {
    assertEquals(Optional.of(THIRTEEN), moved(Optional.of(THREE)));
    Optional<String> nothing = Optional.empty();
    assertSame(nothing, moved(nothing));
    AttributeKey<String> key = new AttributeKey<>("test.word", String.class);
    assertSame(Attributes.NONE, moved(Attributes.NONE));
    Draft draft = new Draft(new PlanInfo("p", "P", "", "", "", "", UnitSystem.US, "$"));
    draft.attributes().add(key, "kale", at(5));
    Attributes moved = moved(draft.freeze().attributes());
    assertEquals(at(18), moved.all(key).get(0).place());
    assertEquals("kale", moved.all(key).get(0).value());
  }

  @Test
  void whatCannotBeMadeAnew_isStuckOnlyIfItHoldsAPlace() {
    stuck(new Box(at(3)));
    stuck(new Object[] {THREE});
    stuck(new ArrayDeque<>(List.of(THREE)));
    Box box = new Box("x");
    assertSame(box, moved(box));
    Object[] array = {"x", null};
    assertSame(array, moved(array));
    double[] numbers = {1.5};
    assertSame(numbers, moved(numbers));
    assertArrayEquals(new double[] {1.5}, numbers);
    assertEquals("x", box.inside);
  }

  @Test
  void alike_areThoseThatDifferInPlacesOnly() {
    assertTrue(Likeness.exact(new Holder(4, THREE, FIVE), new Holder(4, THREE, FIVE)));
    assertFalse(Likeness.exact(THREE, THIRTEEN));
    Moves noted = Likeness.of(THREE, THIRTEEN, true, false).orElseThrow();
    assertEquals(at(13), noted.of(at(3)));
    assertTrue(Likeness.of(THREE, EIGHTEEN, true, false).isEmpty(), "other words");
    assertTrue(
        Likeness.of(List.of(THREE, FIVE), List.of(EIGHTEEN, THIRTEEN), true, false).isEmpty());
    assertTrue(
        Likeness.of(
                List.of(THREE, new Fact("three", at(3))),
                List.of(THIRTEEN, new Fact("three", at(14))),
                true,
                false)
            .isEmpty(),
        "one line cannot stand on two");
    assertFalse(Likeness.exact(null, "x"));
    assertFalse(Likeness.exact("x", null));
    assertTrue(Likeness.exact(null, null));
    assertFalse(Likeness.exact(at(3), "x"));
    assertFalse(Likeness.exact(Optional.of("x"), "x"));
    assertFalse(Likeness.exact(Optional.of("x"), Optional.empty()));
    assertTrue(Likeness.exact(Optional.of("x"), Optional.of("x")));
    assertFalse(Likeness.exact(List.of("x"), "x"));
    assertFalse(Likeness.exact(code("x"), code("x")), "code is like itself only");
    assertFalse(Likeness.exact(List.of("x"), List.of("x", "y")));
    assertFalse(Likeness.exact(Map.of("x", 1), "x"));
    assertFalse(Likeness.exact(1, 1L), "another class");
    assertTrue(Likeness.exact(new Box("x"), new Box("x")), "field by field");
    assertFalse(Likeness.exact(new Box("x"), new Box("y")));
  }

  private static java.util.function.Supplier<String> code(String says) {
    return () -> says;
  }

  @Test
  void arrays_areComparedPartByPart() {
    assertTrue(Likeness.exact(new double[] {1, 2}, new double[] {1, 2}));
    assertFalse(Likeness.exact(new double[] {1, 2}, new double[] {1, 3}));
    assertTrue(Likeness.exact(new Object[] {"a", THREE}, new Object[] {"a", THREE}));
    assertFalse(Likeness.exact(new Object[] {"a", THREE}, new Object[] {"a", FIVE}));
    assertFalse(Likeness.exact(new Object[] {"a"}, new Object[] {"a", "b"}));
    assertTrue(Likeness.exact(new int[] {4}, new int[] {4}));
    assertFalse(Likeness.exact(new int[] {4}, new int[] {5}));
  }

  @Test
  void samePlaces_areNotedWhereEveryOneIsAskedFor() {
    assertEquals(null, Likeness.of(THREE, THREE, true, false).orElseThrow().of(at(3)));
    assertEquals(at(3), Likeness.of(THREE, THREE, true, true).orElseThrow().of(at(3)));
    Set<Fact> set = Set.of(THREE, FIVE);
    Moves noted = Likeness.of(set, Set.copyOf(set), true, true).orElseThrow();
    assertEquals(at(5), noted.of(at(5)));
    Moves ofMaps = Likeness.of(Map.of("a", FIVE), Map.of("a", EIGHTEEN), true, true).orElseThrow();
    assertEquals(at(18), ofMaps.of(at(5)));
    assertTrue(Likeness.of(Map.of("a", FIVE), Map.of("b", EIGHTEEN), true, true).isEmpty());
  }

  @Test
  void moves_mayNotCross_norMeetFromAnotherRun() {
    Moves moves = moves();
    Moves others = new Moves();
    assertTrue(others.pair(at(4), at(15)));
    assertTrue(moves.add(others));
    assertEquals(at(15), moves.of(at(4)));
    Moves crossing = new Moves();
    assertTrue(crossing.pair(at(6), at(12)));
    assertFalse(moves().add(crossing));
    assertFalse(moves().pair(at(6), new SourceRef("a.groovy", 0, 0)), "nowhere is no line");
    assertSame(SourceRef.NONE, moves.of(SourceRef.NONE));
    Moves same = new Moves();
    assertTrue(same.pair(at(3), at(3)));
    assertTrue(same.areNone());
  }

  @Test
  void held_saysWhatAResultHandsOn() {
    assertEquals(Optional.of(Set.of()), Held.in(new Holder(1, THREE, Arrays.asList("a", null))));
    Runnable code = () -> {};
    assertTrue(Likeness.exact(code, code));
    assertTrue(Held.in(new Holder(1, THREE, List.of(code))).isEmpty(), "code may read anything");
    assertTrue(Held.in(Map.of("a", code)).isEmpty());
    assertTrue(Held.in(Optional.of(Attributes.NONE)).isEmpty());
    assertTrue(Held.in(new Object[] {code}).isEmpty());
    assertEquals(Optional.of(Set.of()), Held.in(new double[] {1}));
    assertTrue(Held.in(Map.of(new Box(code), "a")).isEmpty(), "in a key");
    assertTrue(Held.in(new Box(new Box(code))).isEmpty());
  }
}
