package yardloom.kernel.recall;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import yardloom.kernel.plan.Reads;

/**
 * A piece of a reader's work that is made of its input alone: the sun of a lot of what casts shade,
 * say. In a run with a memory it is made again only if its input is not the one of the run before,
 * though the reader as a whole works, because something else that it read has changed.
 *
 * <p>Whoever makes a piece may read nothing but the input; one that asks the plan or its facts all
 * the same is made every time.
 */
public final class Piece {
  private static final ThreadLocal<Shelf> PRESENT = new ThreadLocal<>();

  private Piece() {}

  /**
   * What {@code work} makes of {@code input}.
   *
   * @param name tells it from the other pieces of the same reader in one run
   * @param input compared by value, places in scripts included
   */
  public static <I, O> O of(String name, I input, Function<I, O> work) {
    return after(name, input, (before, now) -> work.apply(now));
  }

  /** Makes a piece with the help of the one before. */
  @FunctionalInterface
  public interface After<I, O> {
    /**
     * The same, to the last bit, as is made without help.
     *
     * @param before the input and piece of the run before, if there was one
     */
    O make(Optional<Made<I, O>> before, I now);
  }

  /** A piece and what it was made of. */
  public record Made<I, O>(I input, O piece) {}

  /** The same where the piece of the run before, of another input, spares some of the work. */
  public static <I, O> O after(String name, I input, After<I, O> work) {
    Shelf shelf = PRESENT.get();
    return shelf == null ? work.make(Optional.empty(), input) : shelf.of(name, input, work);
  }

  /** Lets {@code work} run on this thread with the pieces of its reader. */
  static <T> T with(Shelf shelf, Supplier<T> work) {
    Shelf outer = PRESENT.get();
    PRESENT.set(shelf);
    try {
      return work.get();
    } finally {
      PRESENT.set(outer);
    }
  }

  /** The pieces of one reader: those of its last run, and those of the present one. */
  static final class Shelf {
    private final Map<String, Made<?, ?>> before;
    private final Map<String, Made<?, ?>> now = new HashMap<>();

    /** What a reader kept that has not worked yet. */
    Shelf() {
      this(Map.of());
    }

    private Shelf(Map<String, Made<?, ?>> before) {
      this.before = before;
    }

    /** The shelf for the reader's next run. */
    Shelf next() {
      return new Shelf(now);
    }

    @SuppressWarnings("unchecked")
    <I, O> O of(String name, I input, After<I, O> work) {
      Made<I, O> last = (Made<I, O>) before.get(name);
      if (last != null && Likeness.exact(last.input(), input)) {
        now.put(name, last);
        return last.piece();
      }
      Reads.Noted<O> noted = Reads.noting(() -> work.make(Optional.ofNullable(last), input));
      noted.questions().forEach(q -> Reads.note(q.topic(), q.about()));
      if (noted.questions().isEmpty()) {
        now.put(name, new Made<>(input, noted.result()));
      }
      return noted.result();
    }
  }
}
