package yardloom.program.hands;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountedCompleter;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.IntConsumer;
import yardloom.kernel.hands.Hands;

/**
 * As many hands as the machine has processors. Work that is handed out by work, such as the rows of
 * a field, is shared by the same threads.
 */
public final class ManyHands implements Hands {
  /** More would hold more sheets at once than memory has room for. */
  private static final int MOST = 4;

  private static final ForkJoinPool THREADS =
      new ForkJoinPool(Math.min(MOST, Runtime.getRuntime().availableProcessors()));

  @Override
  public void inTurn(List<Set<Integer>> after, IntConsumer work) {
    Round round = new Round(after, work);
    if (ForkJoinTask.inForkJoinPool()) {
      round.invoke();
    } else {
      THREADS.invoke(round);
    }
    round.requireDone();
  }

  /** All pieces; it has ended when each of them has that can begin. */
  private static final class Round extends CountedCompleter<Void> {
    private static final long serialVersionUID = 1;

    private final transient IntConsumer work;
    private final transient List<List<Integer>> before = new ArrayList<>();
    private final transient AtomicInteger[] waits;
    private final transient AtomicReferenceArray<Throwable> failures;

    Round(List<Set<Integer>> after, IntConsumer work) {
      this.work = work;
      waits = new AtomicInteger[after.size()];
      failures = new AtomicReferenceArray<>(after.size());
      for (int i = 0; i < waits.length; i++) {
        before.add(new ArrayList<>());
        waits[i] = new AtomicInteger(after.get(i).size());
        for (int earlier : after.get(i)) {
          before.get(earlier).add(i);
        }
      }
    }

    @Override
    public void compute() {
      // A thread takes the last that it laid down.
      for (int i = waits.length - 1; i >= 0; i--) {
        if (waits[i].get() == 0) {
          begin(i);
        }
      }
      tryComplete();
    }

    private void begin(int i) {
      addToPendingCount(1);
      new Piece(this, i).fork();
    }

    /** What waits for a piece that failed never begins. */
    private void work(int i) {
      try {
        work.accept(i);
      } catch (Throwable e) {
        failures.set(i, e);
        return;
      }
      List<Integer> free = before.get(i);
      for (int n = free.size() - 1; n >= 0; n--) {
        if (waits[free.get(n)].decrementAndGet() == 0) {
          begin(free.get(n));
        }
      }
    }

    void requireDone() {
      for (int i = 0; i < failures.length(); i++) {
        if (failures.get(i) instanceof RuntimeException e) {
          throw e;
        }
        if (failures.get(i) instanceof Error e) {
          throw e;
        }
      }
    }
  }

  private static final class Piece extends CountedCompleter<Void> {
    private static final long serialVersionUID = 1;

    private final transient Round round;
    private final int number;

    Piece(Round round, int number) {
      super(round);
      this.round = round;
      this.number = number;
    }

    @Override
    public void compute() {
      round.work(number);
      tryComplete();
    }
  }
}
