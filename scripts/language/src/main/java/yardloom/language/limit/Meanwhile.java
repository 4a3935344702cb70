package yardloom.language.limit;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Work begun beforehand, so that it is done when it is needed. It changes nothing but the time:
 * whoever needs its result waits for it.
 */
public final class Meanwhile<T> {
  private final FutureTask<T> task;

  private Meanwhile(Callable<T> work) {
    task = new FutureTask<>(work);
  }

  /** Begins {@code work} in a thread of its own, which does not keep the process alive. */
  public static <T> Meanwhile<T> begin(String name, Callable<T> work) {
    Meanwhile<T> begun = new Meanwhile<>(work);
    Thread thread = new Thread(begun.task, name);
    thread.setDaemon(true);
    thread.start();
    return begun;
  }

  /**
   * The result, waited for if need be.
   *
   * @throws RuntimeException or an error: what the work threw
   */
  public T get() {
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return task.get();
        } catch (InterruptedException e) {
          interrupted = true;
        } catch (ExecutionException e) {
          throw thrown(e.getCause());
        }
      }
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }

  private static RuntimeException thrown(Throwable cause) {
    if (cause instanceof RuntimeException e) {
      return e;
    }
    if (cause instanceof Error e) {
      throw e;
    }
    return new IllegalStateException(cause);
  }
}
