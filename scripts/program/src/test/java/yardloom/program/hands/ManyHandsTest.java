package yardloom.program.hands;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ManyHandsTest {
  private final ManyHands hands = new ManyHands();

  @Test
  void inTurn_anyPieces_eachOnceAfterThoseItWaitsFor() {
    for (int run = 0; run < 50; run++) {
      Random random = new Random(20261128 + run);
      List<Set<Integer>> after = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        Set<Integer> before = new TreeSet<>();
        for (int n = 0; i > 0 && n < random.nextInt(4); n++) {
          before.add(random.nextInt(i));
        }
        after.add(before);
      }
      AtomicIntegerArray ended = new AtomicIntegerArray(40);
      hands.inTurn(
          after,
          i -> {
            assertTrue(after.get(i).stream().allMatch(b -> ended.get(b) == 1), "too early: " + i);
            ended.incrementAndGet(i);
          });
      assertTrue(IntStream.range(0, 40).allMatch(i -> ended.get(i) == 1));
    }
  }

  @Test
  void all_ofAll_givesInOrder() {
    List<Supplier<List<Integer>>> works =
        IntStream.range(0, 20)
            .<Supplier<List<Integer>>>mapToObj(
                i ->
                    () ->
                        hands.all(
                            IntStream.range(0, 20)
                                .<Supplier<Integer>>mapToObj(k -> () -> 20 * i + k)
                                .toList()))
            .toList();
    assertEquals(
        IntStream.range(0, 400).boxed().toList(),
        hands.<List<Integer>>all(works).stream().flatMap(List::stream).toList());
  }

  /** Piece 3 would fail first by the clock; a single pair of hands would have stopped at 1. */
  @Test
  void inTurn_severalFail_throwsTheFirstByNumberAndBeginsNoneThatWaits() {
    List<Integer> begun = Collections.synchronizedList(new ArrayList<>());
    CountDownLatch late = new CountDownLatch(1);
    IllegalStateException thrown =
        assertThrows(
            IllegalStateException.class,
            () ->
                hands.inTurn(
                    List.of(Set.of(), Set.of(), Set.of(1), Set.of()),
                    i -> {
                      begun.add(i);
                      if (i == 1) {
                        awaitQuietly(late);
                        throw new IllegalStateException("piece 1");
                      }
                      if (i == 3) {
                        late.countDown();
                        throw new IllegalStateException("piece 3");
                      }
                    }));
    assertEquals("piece 1", thrown.getMessage());
    assertEquals(Set.of(0, 1, 3), Set.copyOf(begun));
  }

  /** With one processor nobody else may count down; then a second is waited for. */
  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await(1, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void inTurn_anError_isThrownAsItIs() {
    assertThrows(
        StackOverflowError.class,
        () ->
            hands.inTurn(
                List.of(Set.of()),
                i -> {
                  throw new StackOverflowError();
                }));
  }
}
