package yardloom.kernel.hands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class HandsTest {
  @Test
  void one_works_doesThemInOrder() {
    List<Integer> done = new ArrayList<>();
    Hands.ONE.inTurn(List.of(Set.of(), Set.of(0), Set.of()), done::add);
    assertEquals(List.of(0, 1, 2), done);
  }

  @Test
  void one_pieceFails_stopsThere() {
    List<Integer> done = new ArrayList<>();
    assertThrows(
        IllegalStateException.class,
        () ->
            Hands.ONE.inTurn(
                List.of(Set.of(), Set.of(), Set.of()),
                i -> {
                  if (i == 1) {
                    throw new IllegalStateException();
                  }
                  done.add(i);
                }));
    assertEquals(List.of(0), done);
  }

  @Test
  void all_inAnyOrder_givesInTheirOrder() {
    List<Supplier<String>> works = List.of(() -> "a", () -> "b", () -> "c");
    assertEquals(List.of("a", "b", "c"), Hands.ONE.all(works));
    assertEquals(List.of("a", "b", "c"), new LastFirst().all(works));
    assertEquals(List.of(), Hands.ONE.<String>all(List.<Supplier<String>>of()));
  }
}
