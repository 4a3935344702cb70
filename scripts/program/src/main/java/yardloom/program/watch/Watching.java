package yardloom.program.watch;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import yardloom.kernel.hands.Hands;
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
     * @param inView id of the sheet that is looked at, empty if none is
     * @param first told the pages of that sheet, if they can be had before the rest
     * @throws PlanException if the plan is wrong
     */
    Outcome study(Map<String, String> settings, String inView, Consumer<List<ComposedSheet>> first);

    List<ComposedSheet> sheets(Outcome outcome);

    /** By whom sheets are written. */
    default Hands hands() {
      return Hands.ONE;
    }
  }

  private final Drawer drawer;
  private final Path base;
  private final SavedFiles saved;
  private final WatchServer server;
  private final Map<String, String> settings;

  /** Held while the plan is drawn; the page is answered meanwhile. */
  private final Object drawing = new Object();

  private String inView = "";
  private Outcome outcome;
  private final DrawnSheets sheets = new DrawnSheets();
  private ObjectNode picture = Picture.node();
  private ArrayNode problems = picture.arrayNode();
  private long version;

  /** When the picture without its sheets was last made. */
  private long pictured;

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

  /** Draws now, the sheet in view first; what is wrong is shown over the last good picture. */
  final void draw() {
    synchronized (drawing) {
      ScriptLines lines = new ScriptLines(base);
      try {
        Outcome made = drawer.study(settings(), inView(), this::showFirst);
        show(made, drawer.sheets(made), lines);
      } catch (PlanException e) {
        refuse(Picture.problems(e.problems(), lines));
      } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
        // The page stays up whatever a plan does; the command line tells such faults in full.
        refuse(
            Picture.problems(
                List.of(
                    new Problem(
                        ProblemCode.INTERNAL,
                        SourceRef.NONE,
                        "this is a fault of yardloom, not of the plan: "
                            + e.getClass().getSimpleName()
                            + "; run `yardloom check` for a report to send")),
                lines));
      }
    }
  }

  private synchronized Map<String, String> settings() {
    return Map.copyOf(settings);
  }

  private synchronized String inView() {
    return inView;
  }

  private void showFirst(List<ComposedSheet> pages) {
    DrawnSheets.Some some = sheets.written(pages, Hands.ONE);
    synchronized (this) {
      if (sheets.put(some, version + 1)) {
        version++;
        notifyAll();
      }
    }
  }

  private void show(Outcome made, List<ComposedSheet> all, ScriptLines lines) {
    ObjectNode next = Picture.of(made, lines);
    DrawnSheets.Some written = sheets.written(all, drawer.hands());
    synchronized (this) {
      sheets.become(written, version + 1);
      picture = next;
      outcome = made;
      problems = picture.arrayNode();
      version++;
      pictured = version;
      notifyAll();
    }
  }

  private synchronized void refuse(ArrayNode wrong) {
    problems = wrong;
    version++;
    // The last good picture may be less whole than it was: the sheet in view can be ahead of it.
    pictured = version;
    notifyAll();
  }

  /** Gives a parameter another value, or its own again if {@code value} is empty, and draws. */
  void set(String name, String value) {
    synchronized (this) {
      if (value.isEmpty()) {
        settings.remove(name);
      } else {
        settings.put(name, value);
      }
    }
    draw();
  }

  /** From now on the sheet of this id is drawn before the others. */
  synchronized void view(String sheet) {
    inView = sheet;
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
      if (pictured > seen) {
        page.setAll(picture);
      }
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
