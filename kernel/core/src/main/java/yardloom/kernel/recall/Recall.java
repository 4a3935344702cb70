package yardloom.kernel.recall;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import yardloom.kernel.fact.Again;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.plan.Reads;
import yardloom.kernel.plan.Reads.Question;
import yardloom.kernel.plan.Reads.Topic;

/**
 * Remembers what each reader of a run asked and gave, and lets it work again only if an answer has
 * changed. A run with a memory gives what a run without one would.
 *
 * <p>Answers are compared by value. A statement that stands on another line now and says the same
 * is no change: the earlier result is given with its places set anew, if it can be told apart where
 * each of them belongs. What a run that failed found out is forgotten. Not thread-safe; for one
 * plan after its edits.
 */
public final class Recall implements Again {
  private final SortedSet<String> worked = new TreeSet<>();
  private Run last;
  private Run now;

  /** What one reader gave, and why that still holds. */
  private record Kept(Object result, Set<Question> questions, Answers asked) {}

  /** What has changed since somebody answered. */
  private record Since(Answers answers, Question question) {}

  /** What each reader made when it last worked, even if that was some runs ago. */
  private final Map<String, Piece.Shelf> pieces = new HashMap<>();

  /** The memories of the parts of a plan that is made in parts, by their names. */
  private final Map<String, Recall> parts = new TreeMap<>();

  /** The parts that the present run has. */
  private final Set<String> present = new HashSet<>();

  /** One run. */
  private static final class Run {
    private final Answers answers;
    private final Map<String, Kept> kept = new HashMap<>();
    private final Map<String, Integer> names = new HashMap<>();
    private final Map<Since, Optional<Moves>> changes = new HashMap<>();
    private final Map<Since, Optional<Moves>> places = new HashMap<>();

    Run(Plan plan, Results facts) {
      answers = new Answers(plan, facts);
    }
  }

  @Override
  public void over(Plan plan, Results facts) {
    now = new Run(plan, facts);
    worked.clear();
    present.clear();
  }

  @Override
  public Again part(String name) {
    present.add(name);
    return parts.computeIfAbsent(name, n -> new Recall());
  }

  @Override
  public void offers(Function<Object, ?> tables) {
    now.answers.offers(tables);
  }

  /** The run has come to its end; the next one is held against it. */
  public void keep() {
    last = now;
    // What was compared is about the run before, which is not needed any more.
    last.changes.clear();
    last.places.clear();
    parts.keySet().retainAll(present);
    parts.values().forEach(Recall::keep);
  }

  /**
   * The run has come to its end and only some were asked: what the others gave before is still held
   * against what they were told then.
   */
  public void keepPart() {
    if (last != null) {
      last.kept.forEach(now.kept::putIfAbsent);
    }
    keep();
  }

  /** Those that worked in this run, by kind and name; the others' earlier results still held. */
  public SortedSet<String> worked() {
    SortedSet<String> all = new TreeSet<>(worked);
    parts.values().forEach(p -> all.addAll(p.worked));
    return Collections.unmodifiableSortedSet(all);
  }

  @Override
  @SuppressWarnings("unchecked")
  public <T> T of(String reader, Supplier<T> work) {
    String name = reader + " " + now.names.merge(reader, 1, Integer::sum);
    Kept before = last == null ? null : last.kept.get(name);
    if (before != null) {
      Optional<?> still = still(before);
      if (still.isPresent()) {
        now.kept.put(name, new Kept(still.get(), before.questions(), now.answers));
        return (T) still.get();
      }
    }
    worked.add(reader);
    Piece.Shelf shelf = pieces.getOrDefault(name, new Piece.Shelf()).next();
    Reads.Noted<T> noted = Reads.noting(() -> Piece.with(shelf, work));
    pieces.put(name, shelf);
    T result = noted.result();
    if (before != null && Likeness.exact(before.result(), result)) {
      // The very same object is soon found to be the same again.
      result = (T) before.result();
    }
    keep(name, result, noted.questions());
    return result;
  }

  private void keep(String name, Object result, Set<Question> asked) {
    Optional<Set<Question>> handedOn = Held.in(result);
    if (handedOn.isPresent()) {
      handedOn.get().addAll(asked);
      now.kept.put(name, new Kept(result, handedOn.get(), now.answers));
    }
  }

  /** The earlier result as it holds now; empty if it does not. */
  private Optional<?> still(Kept before) {
    boolean moved = false;
    for (Question question : before.questions()) {
      Optional<Moves> change = known(now.changes, before, question, false);
      if (change.isEmpty()) {
        return Optional.empty();
      }
      moved |= !change.get().areNone();
    }
    if (!moved) {
      return Optional.of(before.result());
    }
    Moves all = new Moves();
    for (Question question : before.questions()) {
      Optional<Moves> places = known(now.places, before, question, true);
      if (places.isEmpty() || !all.add(places.get())) {
        return Optional.empty();
      }
    }
    return Relocation.of(before.result(), all);
  }

  /** An answer may let others work first, whose questions are answered meanwhile. */
  private Optional<Moves> known(
      Map<Since, Optional<Moves>> known, Kept before, Question question, boolean everyPlace) {
    Since since = new Since(before.asked(), question);
    Optional<Moves> change = known.get(since);
    if (change == null) {
      change = change(before.asked(), question, everyPlace);
      known.put(since, change);
    }
    return change;
  }

  private Optional<Moves> change(Answers before, Question question, boolean everyPlace) {
    return Likeness.of(
        before.to(question),
        now.answers.to(question),
        question.topic() != Topic.KIND && question.topic() != Topic.ELEMENT,
        everyPlace);
  }
}
