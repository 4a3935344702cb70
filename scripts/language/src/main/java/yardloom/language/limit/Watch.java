package yardloom.language.limit;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;

/**
 * Does work that strangers wrote on a thread of its own, with its own stack, and watches its time
 * and memory.
 *
 * <p>The work ends itself at its next step once a limit is passed. If it sits in one long library
 * call it is left behind: a Java thread cannot be killed. The command line then halts; programs
 * that run many strangers' scripts should use a child process for each.
 */
public final class Watch {
  private static final long STACK_BYTES = 64L << 20;
  private static final long LOOK_MILLIS = 10;
  private static final long GRACE_MILLIS = 2_000;

  private Watch() {}

  public static <R> R over(RunLimits limits, Function<Meter, R> work) {
    AtomicReference<R> result = new AtomicReference<>();
    AtomicReference<Throwable> thrown = new AtomicReference<>();
    AtomicReference<Meter> meter = new AtomicReference<>();
    Thread thread =
        new Thread(
            null,
            () -> {
              Meter mine = new Meter(limits, Thread.currentThread());
              meter.set(mine);
              mine.enterThread();
              try {
                result.set(work.apply(mine));
              } catch (Throwable t) {
                thrown.set(t);
              } finally {
                mine.leaveThread();
              }
            },
            "plan script",
            STACK_BYTES);
    thread.setDaemon(true);
    thread.setContextClassLoader(null);
    thread.start();
    await(thread, meter);
    if (thrown.get() instanceof RuntimeException e) {
      throw e;
    } else if (thrown.get() instanceof Error e) {
      throw e;
    }
    return result.get();
  }

  private static void await(Thread thread, AtomicReference<Meter> meter) {
    long patience = GRACE_MILLIS;
    try {
      while (thread.isAlive()) {
        thread.join(LOOK_MILLIS);
        Meter present = meter.get();
        String why = present == null || !thread.isAlive() ? null : present.overdrawn();
        if (why != null) {
          present.stop(why);
          patience -= LOOK_MILLIS;
          if (patience <= 0) {
            throw new LimitReached(why);
          }
        }
      }
    } catch (InterruptedException e) {
      meter.get().stop("the run was interrupted");
      Thread.currentThread().interrupt();
      throw new LimitReached("the run was interrupted");
    }
  }
}
