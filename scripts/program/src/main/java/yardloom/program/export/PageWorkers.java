package yardloom.program.export;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import yardloom.sheet.svg.SvgSheet;

/**
 * Makes something of each sheet, some at a time, in the order of the sheets. All that the program
 * paints at once shares these few threads: a picture takes a hundred megabytes while it is made.
 */
public final class PageWorkers {
  private static final int MOST_AT_ONCE = 2;

  private static final ExecutorService THREADS =
      Executors.newFixedThreadPool(
          Math.min(MOST_AT_ONCE, Runtime.getRuntime().availableProcessors()),
          task -> {
            Thread thread = new Thread(task, "sheet");
            thread.setDaemon(true);
            return thread;
          });

  private PageWorkers() {}

  /** What is made of one sheet. */
  @FunctionalInterface
  public interface Work<T> {
    T of(SvgSheet sheet) throws IOException;
  }

  /**
   * What {@code work} gives for each sheet. All work has ended when this returns or throws.
   *
   * @throws IOException or what else {@code work} throws, of the first sheet that fails
   */
  public static <T> List<T> each(List<SvgSheet> sheets, Work<T> work) throws IOException {
    List<Future<T>> waiting = new ArrayList<>();
    for (SvgSheet sheet : sheets) {
      waiting.add(THREADS.submit(() -> work.of(sheet)));
    }
    List<T> made = new ArrayList<>();
    Throwable failure = null;
    for (Future<T> one : waiting) {
      try {
        made.add(one.get());
      } catch (ExecutionException e) {
        failure = failure == null ? e.getCause() : failure;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        waiting.forEach(w -> w.cancel(true));
        throw new IOException("the writing of the sheets was broken off", e);
      }
    }
    if (failure != null) {
      throw thrown(failure);
    }
    return made;
  }

  private static IOException thrown(Throwable failure) {
    if (failure instanceof RuntimeException e) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
    return failure instanceof IOException e ? e : new IOException(failure);
  }
}
