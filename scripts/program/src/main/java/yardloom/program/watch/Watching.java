package yardloom.program.watch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.Problem;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.study.Outcome;
import yardloom.program.explain.Explanation;
import yardloom.program.explain.ScriptLines;
import yardloom.sheet.compose.ComposedSheet;

/**
 * One watched plan: its last good picture, what is wrong with it now, and a page that shows both.
 * It is drawn again when a file beside it is saved or a parameter is set on the page.
 */
public final class Watching implements AutoCloseable {
  /** Works a plan out and composes its sheets. */
  public interface Drawer {
    /**
     * The results with these values for parameters.
     *
     * @throws PlanException if the plan is wrong
     */
    Outcome study(Map<String, String> settings);

    List<ComposedSheet> sheets(Outcome outcome);
  }

  private final Drawer drawer;
  private final Path base;
  private final SavedFiles saved;
  private final WatchServer server;
  private final Map<String, String> settings;
  private Outcome outcome;
  private final DrawnSheets sheets = new DrawnSheets();
  private ObjectNode picture = Picture.node();
  private ArrayNode problems = picture.arrayNode();
  private long version;
  private boolean closed;

  /**
   * Draws once and begins to serve and to watch.
   *
   * @param base what names of files are resolved against
   */
  public Watching(Path plan, Path base, Map<String, String> settings, Drawer drawer)
      throws IOException {
    this.drawer = drawer;
    this.base = base;
    this.settings = new LinkedHashMap<>(settings);
    saved = new SavedFiles(plan.toRealPath().getParent(), this::draw);
    draw();
    server = new WatchServer(this);
    saved.start();
  }

  /** The address of the page, with the token without which it answers nothing. */
  public String address() {
    return server.address();
  }

  /** Draws now; what is wrong is shown over the last good picture. */
  final synchronized void draw() {
    ScriptLines lines = new ScriptLines(base);
    try {
      Outcome made = drawer.study(Map.copyOf(settings));
      sheets.become(drawer.sheets(made), version + 1);
      picture = Picture.of(made, lines);
      outcome = made;
      problems = picture.arrayNode();
    } catch (PlanException e) {
      problems = Picture.problems(e.problems(), lines);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      // The page stays up whatever a plan does; the command line tells such faults in full.
      problems =
          Picture.problems(
              List.of(
                  new Problem(
                      ProblemCode.INTERNAL,
                      SourceRef.NONE,
                      "this is a fault of yardloom, not of the plan: "
                          + e.getClass().getSimpleName()
                          + "; run `yardloom check` for a report to send")),
              lines);
    }
    version++;
    notifyAll();
  }

  /** Gives a parameter another value, or its own again if {@code value} is empty, and draws. */
  synchronized void set(String name, String value) {
    if (value.isEmpty()) {
      settings.remove(name);
    } else {
      settings.put(name, value);
    }
    draw();
  }

  /** The state as JSON once it is newer than {@code seen}, or after {@code waitMillis} as it is. */
  synchronized byte[] state(long seen, long waitMillis) throws InterruptedException {
    if (version == seen && !closed) {
      wait(waitMillis);
    }
    ObjectNode all = Picture.node().put("version", version);
    all.set("problems", problems);
    if (version != seen) {
      ObjectNode page = all.putObject("picture");
      page.setAll(picture);
      if (outcome != null) {
        sheets.addTo(page.putArray("sheets"), seen);
      }
      ObjectNode set = all.putObject("settings");
      settings.forEach(set::put);
    }
    return Picture.bytes(all);
  }

  /** Why a printed quantity is what it is. */
  synchronized String why(String what) {
    return outcome == null ? "" : new Explanation(outcome, new ScriptLines(base)).of(what).text();
  }

  @Override
  public void close() {
    synchronized (this) {
      closed = true;
      notifyAll();
    }
    saved.close();
    server.close();
  }
}
