package yardloom.scripts.dsl;

import java.lang.management.ManagementFactory;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.SourceRef;

/** Counts what one running script uses up, and knows the word it is at. */
final class Meter {
  /** Memory and depth are looked at each so many steps. */
  private static final int OFTEN = 32;

  private static final ThreadLocal<Meter> PRESENT = new ThreadLocal<>();

  private final Limits limits;
  private final long startBytes;
  private final long threadId;
  private final long endNanos;
  private final Deque<SourceRef> words = new ArrayDeque<>();
  private volatile String stop;
  private long steps;
  private int items;

  Meter(Limits limits, Thread thread) {
    this.limits = limits;
    this.threadId = thread.getId();
    this.startBytes = allocated(threadId);
    this.endNanos = System.nanoTime() + limits.time().toNanos();
  }

  static Meter present() {
    Meter meter = PRESENT.get();
    if (meter == null) {
      throw new IllegalStateException("no script is running on this thread");
    }
    return meter;
  }

  void enterThread() {
    PRESENT.set(this);
  }

  void leaveThread() {
    PRESENT.remove();
  }

  /** Asks the script to end at its next step. */
  void stop(String reason) {
    stop = reason;
  }

  void step() {
    if (++steps > limits.steps()) {
      throw new LimitReached(
          String.format(
              Locale.ROOT,
              "the script takes more than %,d steps; does a loop never end?",
              limits.steps()));
    }
    if (stop != null) {
      throw new LimitReached(stop);
    }
    if (steps % OFTEN == 0) {
      check();
    }
  }

  /** Counts list items and text made by operators, which can grow fast between steps. */
  void grow(int size) {
    items += size / 64;
    if (items >= 64) {
      items = 0;
      check();
    }
  }

  private void check() {
    String why = overdrawn();
    if (why != null) {
      throw new LimitReached(why);
    }
    long depth = StackWalker.getInstance().walk(s -> s.limit(limits.depth() * 12L).count());
    if (depth >= limits.depth() * 12L) {
      throw new LimitReached("helpers or closures call each other too deeply");
    }
  }

  /** Why the script has to end, or null. May be asked from another thread. */
  String overdrawn() {
    if (System.nanoTime() > endNanos) {
      return "the script runs longer than " + limits.time().toMillis() / 1000.0 + " s";
    }
    if (allocated(threadId) - startBytes > limits.allocatedBytes()) {
      return "the script uses more than " + (limits.allocatedBytes() >> 20) + " MB of memory";
    }
    return null;
  }

  /** Bytes the thread has asked for so far; 0 where the machine does not tell. */
  private static long allocated(long thread) {
    return ManagementFactory.getThreadMXBean() instanceof com.sun.management.ThreadMXBean bean
            && bean.isThreadAllocatedMemorySupported()
        ? bean.getThreadAllocatedBytes(thread)
        : 0;
  }

  void enter(SourceRef word) {
    words.push(word);
  }

  void leave() {
    words.pop();
  }

  /** The innermost word that has begun and not ended. */
  Optional<SourceRef> word() {
    return Optional.ofNullable(words.peek());
  }

  Limits limits() {
    return limits;
  }
}
