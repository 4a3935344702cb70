package yardloom.kernel.hands;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/** Does pieces of work, some at once if there are several hands; no thread is made here. */
public interface Hands {
  /** One pair: each piece after the other, in order. */
  Hands ONE =
      (after, work) -> {
        for (int i = 0; i < after.size(); i++) {
          work.accept(i);
        }
      };

  /**
   * Does the pieces 0, 1, 2, … once each. All that were begun have ended when this returns or
   * throws.
   *
   * @param after for each piece those that must have ended before it begins, all of lower number
   * @param work called from several threads
   * @throws RuntimeException or what else {@code work} throws, for the piece of lowest number that
   *     fails: the one at which a single pair of hands would have stopped
   */
  void inTurn(List<Set<Integer>> after, IntConsumer work);

  /**
   * What the pieces of work give, in their order; none needs another.
   *
   * @throws RuntimeException or what else a piece throws, of the first that fails
   */
  default <T> List<T> all(List<? extends Supplier<? extends T>> works) {
    Object[] made = new Object[works.size()];
    inTurn(
        Collections.nCopies(made.length, Set.of()),
        i -> {
          made[i] = works.get(i).get();
        });
    @SuppressWarnings("unchecked")
    List<T> all = (List<T>) Collections.unmodifiableList(Arrays.asList(made));
    return all;
  }
}
