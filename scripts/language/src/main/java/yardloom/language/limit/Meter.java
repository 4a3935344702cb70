package yardloom.language.limit;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import yardloom.kernel.problem.SourceRef;

/** Counts what one running script uses up, and knows the word it is at. */
public final class Meter {
  /** Memory and depth are looked at each so many steps. */
  private static final int OFTEN = 32;

  /** What reading may take beyond the script's own limit: a cold parser needs much. */
  private static final long READING_BYTES = 1L << 30;

  /** A busy machine may take this many times longer by the clock. */
  private static final int PATIENCE = 4;

  private static final ThreadLocal<Meter> PRESENT = new ThreadLocal<>();

  private final RunLimits limits;
  private volatile long startBytes;
  private final long threadId;
  private final long endNanos;
  private final long startCpuNanos;
  private final Deque<SourceRef> words = new ArrayDeque<>();
  private volatile String stop;
  private long steps;
  private long nextCheck = OFTEN;
  private int items;
  private int elements;

  public Meter(RunLimits limits, Thread thread) {
    this.limits = limits;
    this.threadId = thread.getId();
    this.startBytes = allocated(threadId) + READING_BYTES;
    this.endNanos = System.nanoTime() + PATIENCE * limits.time().toNanos();
    this.startCpuNanos = cpuNanos(threadId);
  }

  /** Reading is done: from here on memory counts against the script's own limit. */
  public void startRunning() {
    startBytes = allocated(threadId);
  }

  public static Meter present() {
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

  public void step() {
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
    if (steps >= nextCheck) {
      nextCheck = steps + OFTEN;
      check();
    }
  }

  /**
   * Counts the items of a list that an operator makes, each as a step: lists of lists would fill
   * the memory long before anything is thrown away.
   */
  public void hold(int size) {
    steps += size;
    if (steps > limits.steps()) {
      throw new LimitReached(
          String.format(
              Locale.ROOT,
              "the script makes lists of so many items that it takes more than %,d steps",
              limits.steps()));
    }
    grow(size);
  }

  /** Counts list items and text made by operators, which can grow fast between steps. */
  public void grow(int size) {
    items += size / 64;
    if (items >= 64) {
      items = 0;
      check();
    }
  }

  /** A word has made an element. */
  public void element() {
    if (++elements > limits.elements()) {
      throw new LimitReached(
          String.format(Locale.ROOT, "the plan has more than %,d elements", limits.elements()));
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
    boolean late = cpuNanos(threadId) - startCpuNanos > limits.time().toNanos();
    if (late || System.nanoTime() > endNanos) {
      return "the script runs longer than " + limits.time().toMillis() / 1000.0 + " s";
    }
    if (allocated(threadId) - startBytes > limits.allocatedBytes()) {
      return "the script uses more than " + (limits.allocatedBytes() >> 20) + " MB of memory";
    }
    return null;
  }

  /** Processor time of the thread; 0 where the machine does not tell. */
  private static long cpuNanos(long thread) {
    ThreadMXBean bean = ManagementFactory.getThreadMXBean();
    return bean.isThreadCpuTimeSupported() && bean.isThreadCpuTimeEnabled()
        ? bean.getThreadCpuTime(thread)
        : 0;
  }

  /** Bytes the thread has asked for so far; 0 where the machine does not tell. */
  private static long allocated(long thread) {
    return ManagementFactory.getThreadMXBean() instanceof com.sun.management.ThreadMXBean bean
            && bean.isThreadAllocatedMemorySupported()
        ? bean.getThreadAllocatedBytes(thread)
        : 0;
  }

  public void enter(SourceRef word) {
    words.push(word);
  }

  public void leave() {
    words.pop();
  }

  /** How many words have begun and not ended. */
  public int openWords() {
    return words.size();
  }

  /** Words that began inside a block have ended with it. */
  public void leaveTo(int openWords) {
    while (words.size() > openWords) {
      words.pop();
    }
  }

  /** The innermost word that has begun and not ended. */
  public Optional<SourceRef> word() {
    return Optional.ofNullable(words.peek());
  }
}
