package yardloom.program.batch;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Function;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.table.Cell;
import yardloom.kernel.table.Column;
import yardloom.kernel.table.CsvWriter;
import yardloom.kernel.table.Measure;
import yardloom.kernel.table.Table;
import yardloom.kernel.table.TableFormat;
import yardloom.kernel.unit.UnitSystem;

/** Draws the lots of a list, several at a time; one that fails never stops the others. */
public final class Batch {
  /** Draws one lot into its folder; may throw anything. */
  @FunctionalInterface
  public interface Drawer {
    LotResult draw(LotRow lot);
  }

  /** Where progress is told; called by one thread at a time. */
  public interface Listener {
    /**
     * A lot is done.
     *
     * @param line about the lot, for a pipe
     * @param state about the whole, for a terminal
     */
    void done(String line, String state);
  }

  private final Path out;
  private final int jobs;
  private final Listener listener;
  private final DoneLots kept;

  /**
   * @param out where a folder for each lot is written
   * @param jobs how many lots are drawn at a time
   */
  public Batch(Path out, int jobs, Listener listener) {
    this.out = out;
    this.jobs = jobs;
    this.listener = listener;
    this.kept = new DoneLots(out);
  }

  /**
   * Lets the part's lots be drawn again. Forgotten before the first is drawn, so that a run that is
   * cut off goes on where it stopped.
   */
  public void forget(List<LotRow> all, Part part) {
    part.of(all).forEach(kept::forget);
  }

  /**
   * The results of the part's lots in the order of the list, those of an earlier run among them;
   * writes the summary.
   *
   * @param fingerprint tells all that a lot is drawn from, so that a change is noticed
   */
  public List<LotResult> run(
      List<LotRow> all, Part part, Function<LotRow, String> fingerprint, Drawer drawer) {
    List<LotRow> lots = part.of(all);
    Map<String, LotResult> results = new ConcurrentHashMap<>();
    Map<LotRow, String> open = new LinkedHashMap<>();
    for (LotRow lot : lots) {
      String drawnFrom = fingerprint.apply(lot);
      kept.find(lot, drawnFrom)
          .ifPresentOrElse(r -> results.put(lot.name(), r), () -> open.put(lot, drawnFrom));
    }
    Progress progress = new Progress(lots.size(), results.size());
    long start = System.nanoTime();
    ExecutorService workers = Executors.newFixedThreadPool(jobs);
    try {
      List<Future<?>> running = new ArrayList<>();
      open.forEach(
          (lot, drawnFrom) ->
              running.add(
                  workers.submit(
                      () -> {
                        LotResult result = drawn(lot, drawnFrom, drawer);
                        results.put(lot.name(), result);
                        tell(progress, result, Duration.ofNanos(System.nanoTime() - start));
                      })));
      finish(running);
    } finally {
      workers.shutdownNow();
    }
    List<LotResult> inOrder = lots.stream().map(l -> results.get(l.name())).toList();
    write(part, inOrder);
    return inOrder;
  }

  private LotResult drawn(LotRow lot, String fingerprint, Drawer drawer) {
    LotResult result;
    try {
      result = drawer.draw(lot);
      kept.keep(lot, fingerprint, result);
    } catch (PlanException e) {
      result = LotResult.failed(lot.name(), e.problems().get(0).toString());
    } catch (IOException e) {
      result = LotResult.failed(lot.name(), "what is done cannot be kept: " + e.getMessage());
    } catch (RuntimeException | Error e) {
      // A fault of the program in one lot; the others have a right to their drawings.
      result = LotResult.failed(lot.name(), "a fault of yardloom: " + e);
    }
    return result;
  }

  private synchronized void tell(Progress progress, LotResult result, Duration elapsed) {
    progress.add(result);
    listener.done(progress.line(result), progress.state(elapsed));
  }

  private static void finish(List<Future<?>> running) {
    for (Future<?> each : running) {
      try {
        each.get();
      } catch (ExecutionException e) {
        throw new IllegalStateException(e.getCause());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new IllegalStateException("the batch was interrupted", e);
      }
    }
  }

  private void write(Part part, List<LotResult> results) {
    Table.Builder table =
        Table.titled("summary", "Summary")
            .column(Column.text("lot", "Lot"))
            .column(Column.text("result", "Result"))
            .column(Column.of("errors", "Errors", Measure.COUNT))
            .column(Column.of("warnings", "Warnings", Measure.COUNT))
            .column(Column.text("area", "Area"))
            .column(Column.text("hours", "Likely hours"))
            .column(Column.text("cost", "Likely cost"))
            .column(Column.text("message", "Message"));
    for (LotResult r : results) {
      table.row(
          Cell.text(r.lot()),
          Cell.text(r.result()),
          Cell.number(r.errors()),
          Cell.number(r.warnings()),
          Cell.text(r.area()),
          Cell.text(r.hours()),
          Cell.text(r.cost()),
          Cell.text(r.message()));
    }
    try {
      StringBuilder text = new StringBuilder();
      CsvWriter.write(table.build(), new TableFormat(UnitSystem.US, ""), text);
      Files.createDirectories(out);
      DoneLots.whole(out.resolve(part.summary()), text.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
