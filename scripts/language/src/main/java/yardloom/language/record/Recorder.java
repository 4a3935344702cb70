package yardloom.language.record;

import java.lang.reflect.Method;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.form.Exact;
import yardloom.language.form.FormWriter;
import yardloom.language.form.Step;
import yardloom.language.form.Value;

/**
 * Writes down the words that one run of a script calls, and their values as the script wrote them
 * where it did, otherwise exactly as computed.
 *
 * <p>Loops, helpers and conditions are gone from the result: it is what they came to. A word that
 * may stand in any block, such as {@code rect}, changes no plan and is written where its value is
 * used; every other is a step, and gets a name once its value is used again.
 */
public final class Recorder {
  private static final ThreadLocal<Recorder> PRESENT = new ThreadLocal<>();

  /** Beyond it quantities are written as computed, which is the same value. */
  private static final int MOST_NOTED = 500_000;

  private final Map<String, Word> words = new HashMap<>();
  private final Deque<List<Open>> blocks = new ArrayDeque<>();
  private final IdentityHashMap<Object, Made> made = new IdentityHashMap<>();
  private final IdentityHashMap<Object, String> written = new IdentityHashMap<>();
  private final Map<String, Integer> named = new HashMap<>();

  public Recorder(Lexicon lexicon) {
    lexicon.all().forEach(w -> words.put(key(w.method()), w));
    blocks.push(new ArrayList<>());
  }

  static String key(Method method) {
    return groovyjarjarasm.asm.Type.getInternalName(method.getDeclaringClass())
        + "."
        + method.getName()
        + groovyjarjarasm.asm.Type.getMethodDescriptor(method);
  }

  boolean isWord(String key) {
    return words.containsKey(key);
  }

  static Recorder present() {
    return PRESENT.get();
  }

  /** The run on this thread is written down, until {@link #leaveThread}. */
  public void enterThread() {
    PRESENT.set(this);
  }

  public void leaveThread() {
    PRESENT.remove();
  }

  /** What was made by which step, and which part of it. */
  private record Made(Open step, int part) {}

  /** A step whose block may still grow. */
  private static final class Open {
    private final Word word;
    private final List<Optional<Value>> values;

    /** What each reading of its block said; null if it has none. */
    private final List<List<Open>> blocks;

    private final SourceRef place;
    private Step other;
    private String name;

    Open(Word word, List<Optional<Value>> values, List<List<Open>> blocks, SourceRef place) {
      this.word = word;
      this.values = values;
      this.blocks = blocks;
      this.place = place;
    }

    Step step() {
      return other == null
          ? call()
          : other instanceof Step.Include include
              ? new Step.Include(include.file(), steps(blocks.get(0)), place)
              : other;
    }

    Step.Call call() {
      return new Step.Call(word, values, said(), name, place);
    }

    private List<List<Step>> said() {
      if (blocks == null) {
        return List.of();
      }
      List<List<Step>> all = blocks.stream().map(Recorder::steps).toList();
      boolean same = all.stream().map(FormWriter::steps).distinct().count() <= 1;
      return all.isEmpty() ? List.of(List.of()) : same ? List.of(all.get(0)) : all;
    }
  }

  private static List<Step> steps(List<Open> open) {
    return open.stream().map(Open::step).toList();
  }

  /** The steps of the whole run. */
  public List<Step> steps() {
    return steps(blocks.getLast());
  }

  /** A number with a unit, as in {@code 40.ft}. */
  void unit(Quantity<?> quantity, Number number, String unit) {
    if (written.size() < MOST_NOTED) {
      Unit.byWord(unit).ifPresent(u -> written.put(quantity, Exact.text(number.doubleValue(), u)));
    }
  }

  /** A word begins; its block, the last argument if it has one, is made to tell what it says. */
  Object begin(String key, Object[] arguments) {
    Word word = words.get(key);
    List<Optional<Value>> values = new ArrayList<>();
    for (int i = 0; i < word.parameters().size(); i++) {
      values.add(Optional.ofNullable(arguments[i + 1]).map(this::value));
    }
    boolean block = arguments[arguments.length - 1] instanceof Consumer;
    SourceRef place = ((Scope) arguments[0]).place();
    Open open = new Open(word, values, block ? new ArrayList<>() : null, place);
    if (word.scope() != Scope.class) {
      blocks.peek().add(open);
    }
    if (block) {
      arguments[arguments.length - 1] =
          listening((Consumer<?>) arguments[arguments.length - 1], open);
    }
    return open;
  }

  private <S> Consumer<S> listening(Consumer<S> body, Open open) {
    return scope -> {
      List<Open> said = new ArrayList<>();
      open.blocks.add(said);
      blocks.push(said);
      try {
        body.accept(scope);
      } finally {
        blocks.pop();
      }
    };
  }

  void gave(Object begun, Object result) {
    Open open = (Open) begun;
    if (result == null) {
      return;
    }
    made.put(result, new Made(open, 0));
    if (result instanceof Handle handle) {
      note(handle.getShape(), open, 0);
      for (int i = 0; i < handle.getParts().size(); i++) {
        made.put(handle.getParts().get(i), new Made(open, i + 1));
        note(handle.getParts().get(i).getShape(), open, i + 1);
      }
    }
  }

  private void note(Shape ground, Open open, int part) {
    if (!ground.isEmpty()) {
      made.putIfAbsent(ground, new Made(open, part));
    }
  }

  /** A parameter has its value. */
  public void param(SourceRef place, String name, Object value, String help) {
    Open open = new Open(null, List.of(), null, place);
    open.other = new Step.Param(name, value(value), help, true, place);
    blocks.peek().add(open);
  }

  /** An included file begins. */
  public void include(SourceRef place, String file) {
    List<Open> said = new ArrayList<>();
    Open open = new Open(null, List.of(), List.of(said), place);
    open.other = new Step.Include(file, List.of(), place);
    blocks.peek().add(open);
    blocks.push(said);
  }

  public void included() {
    blocks.pop();
  }

  private Value value(Object value) {
    Made by = made.get(value);
    if (by != null) {
      return by.step.word.scope() == Scope.class ? inline(by.step) : ref(by);
    }
    if (value instanceof Quantity<?> quantity) {
      return measure(quantity);
    } else if (value instanceof Point point) {
      return new Value.At(measure(point.x()), measure(point.y()));
    } else if (value instanceof Line line) {
      return new Value.Along(line);
    } else if (value instanceof Shape shape) {
      return new Value.Ground(shape);
    } else if (value instanceof List<?> list) {
      return new Value.Items(list.stream().map(this::value).toList());
    } else if (value instanceof String || value instanceof Number || value instanceof Boolean) {
      return new Value.Plain(value);
    }
    throw new PlanException(
        ProblemCode.WRONG_TYPE,
        "a value of the kind "
            + value.getClass().getSimpleName()
            + " that no word of this plan made cannot be written as JSON");
  }

  /** Two lengths say a point as well as its word does. */
  private static Value inline(Open step) {
    boolean point =
        step.word.method().getReturnType() == Point.class
            && step.word.name().equals("point")
            && step.values.size() == 2
            && step.values.stream()
                .allMatch(
                    v ->
                        v.isPresent()
                            && v.get() instanceof Value.Measure m
                            && m.value() instanceof Length);
    return point
        ? new Value.At(
            (Value.Measure) step.values.get(0).get(), (Value.Measure) step.values.get(1).get())
        : step.call();
  }

  private Value.Measure measure(Quantity<?> quantity) {
    String text = written.get(quantity);
    return text == null ? Exact.of(quantity) : new Value.Measure(quantity, text);
  }

  private Value ref(Made by) {
    Open step = by.step;
    if (step.name == null) {
      int number = named.merge(step.word.name(), 1, Integer::sum);
      step.name = step.word.name() + " " + number;
    }
    return new Value.Ref(step.name, by.part, step.word.method().getReturnType());
  }
}
