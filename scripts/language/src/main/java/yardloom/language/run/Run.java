package yardloom.language.run;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.TreeMap;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.PlanScope;
import yardloom.language.limit.Meter;
import yardloom.language.record.Recorder;
import yardloom.language.value.ParamText;
import yardloom.language.value.Shown;

/** One run of a compiled script: its draft, and the values its parameters get. */
final class Run {
  private static final ThreadLocal<Run> PRESENT = new ThreadLocal<>();

  /** Starts an included script. */
  interface Starter {
    PlanProgram start(String key);
  }

  private final Draft draft;
  private final Starter starter;
  private final Map<String, String> overrides;

  /** The named values of the includes around us, innermost first; empty in the plan itself. */
  private final Deque<Map<String, Object>> given = new ArrayDeque<>();

  private final Map<String, String> texts;
  private final Faults faults;
  private final Failures failures = new Failures();

  /** Writes the run down; null if nobody asked. */
  private final Recorder recorder;

  /**
   * A run.
   *
   * @param texts the data files that the scripts name, by key
   * @param recorder writes the run down; null if nobody asked
   */
  Run(
      Draft draft,
      Starter starter,
      Map<String, String> overrides,
      Map<String, String> texts,
      Faults faults,
      Recorder recorder) {
    this.recorder = recorder;
    this.faults = faults;
    this.draft = draft;
    this.starter = starter;
    this.texts = texts;
    this.overrides = new TreeMap<>(overrides);
  }

  static Run present() {
    return PRESENT.get();
  }

  void start(String key, SourceRef place) {
    PRESENT.set(this);
    if (recorder != null) {
      recorder.enterThread();
    }
    try {
      starter.start(key).run(new PlanScope(draft, place));
    } finally {
      PRESENT.remove();
      if (recorder != null) {
        recorder.leaveThread();
      }
    }
  }

  /**
   * A block ended with {@code thrown}; the script goes on behind it if that was a problem of the
   * plan.
   *
   * @param open the words that were open when it began, its own innermost
   */
  void failed(RuntimeException thrown, Meter meter, int open) {
    if (!Faults.isOfPlan(thrown)) {
      throw thrown;
    }
    PlanException placed = faults.problem(thrown, meter);
    meter.leaveTo(open);
    if (!failures.add(placed, meter.word().orElse(SourceRef.NONE))) {
      failures.refuse();
    }
  }

  /** Refuses the plan if a block of it failed. */
  void refuseIfFailed() {
    failures.refuse();
  }

  /** What ended the script, together with what failed before. */
  PlanException ended(Throwable thrown, Meter meter) {
    return failures.with(faults.problem(thrown, meter));
  }

  Object param(SourceRef place, String name, Object fallback, String help) {
    if (!given.isEmpty()) {
      Map<String, Object> values = given.peek();
      return values.containsKey(name)
          ? matching(place, name, values.get(name), fallback)
          : fallback;
    }
    Object value = fallback;
    if (overrides.containsKey(name)) {
      try {
        value = ParamText.read(name, overrides.get(name), fallback);
      } catch (PlanException e) {
        throw e.at(place);
      }
    }
    draft.parameter(name, Shown.text(value));
    if (recorder != null) {
      recorder.param(place, name, value, help);
    }
    return value;
  }

  private static Object matching(SourceRef place, String name, Object value, Object fallback) {
    if (fallback instanceof Double && value instanceof Number n) {
      return n.doubleValue();
    }
    if (value == null || value.getClass() != fallback.getClass()) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE,
          place,
          "the parameter `"
              + name
              + "` needs "
              + Shown.kind(fallback)
              + "; the include gives "
              + Shown.kind(value));
    }
    return value;
  }

  String fileText(String key) {
    return texts.get(key);
  }

  void include(SourceRef place, String key, Map<String, Object> values) {
    Meter meter = Meter.present();
    meter.enter(place);
    given.push(values);
    if (recorder != null) {
      recorder.include(place, faults.file(key));
    }
    try {
      starter.start(key).run(new PlanScope(draft, place));
    } finally {
      given.pop();
    }
    if (recorder != null) {
      recorder.included();
    }
    meter.leave();
  }
}
