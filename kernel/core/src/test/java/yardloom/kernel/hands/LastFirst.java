package yardloom.kernel.hands;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;

/**
 * The most unlike an ordered run that is allowed: of what may begin, always the last. What several
 * threads do by chance this does every time.
 */
public final class LastFirst implements Hands {
  @Override
  public void inTurn(List<Set<Integer>> after, IntConsumer work) {
    Set<Integer> begun = new HashSet<>();
    Set<Integer> ended = new HashSet<>();
    RuntimeException[] failures = new RuntimeException[after.size()];
    for (int next = next(after, begun, ended); next >= 0; next = next(after, begun, ended)) {
      begun.add(next);
      try {
        work.accept(next);
        ended.add(next);
      } catch (RuntimeException e) {
        failures[next] = e;
      }
    }
    for (RuntimeException failure : failures) {
      if (failure != null) {
        throw failure;
      }
    }
  }

  private static int next(List<Set<Integer>> after, Set<Integer> begun, Set<Integer> ended) {
    for (int i = after.size() - 1; i >= 0; i--) {
      if (!begun.contains(i) && ended.containsAll(after.get(i))) {
        return i;
      }
    }
    return -1;
  }
}
