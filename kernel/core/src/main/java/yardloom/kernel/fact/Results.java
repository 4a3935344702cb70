package yardloom.kernel.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.fact.FactKey.Arity;
import yardloom.kernel.plan.Reads;

/**
 * All facts of a plan with their givers, and the calculators that were skipped. The values of a
 * fact of several givers stand in the order of these, whoever gave first. Thread-safe, so that
 * several may give and read at once.
 */
public final class Results implements Facts {
  private final Map<String, Integer> places;
  private final Map<String, List<Given<?>>> facts = new TreeMap<>();
  private final Map<String, String> skipped = new TreeMap<>();
  private final Set<String> closed = new TreeSet<>();

  /** One value and who gave it. */
  public record Given<T>(T value, String giver) {}

  /** One value under its key, as a calculator gives it. */
  record Gift<T>(FactKey<T> key, T value) {}

  /**
   * @param places of the givers, by id
   */
  Results(Map<String, Integer> places) {
    this.places = places;
  }

  /** The values under the key of that id with their givers, whatever they are; for comparing. */
  public synchronized List<Given<?>> given(String id) {
    return List.copyOf(facts.getOrDefault(id, List.of()));
  }

  /** The values under {@code key} with their givers. */
  public <T> List<Given<T>> given(FactKey<T> key) {
    Reads.note(Reads.Topic.FACT, key.id());
    List<Given<T>> found = new ArrayList<>();
    for (Given<?> g : given(key.id())) {
      found.add(new Given<>(key.type().cast(g.value()), g.giver()));
    }
    return List.copyOf(found);
  }

  /** Calculators that did not run, with the reason. */
  public synchronized Map<String, String> skipped() {
    return Map.copyOf(skipped);
  }

  @Override
  public <T> T get(FactKey<T> key) {
    return find(key).orElseThrow(() -> new IllegalStateException("nobody gave " + key.id()));
  }

  @Override
  public <T> Optional<T> find(FactKey<T> key) {
    if (key.arity() != Arity.ONE) {
      throw new IllegalStateException(key.id() + " has many values; read all of them");
    }
    List<Given<T>> found = given(key);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0).value());
  }

  @Override
  public <T> List<T> all(FactKey<T> key) {
    return given(key).stream().map(Given::value).toList();
  }

  synchronized void skip(String calculator, String reason) {
    skipped.put(calculator, reason);
  }

  /** These facts, refusing keys that {@code reader} did not declare. */
  Facts readBy(Calculator reader) {
    Set<String> declared = FactGraph.ids(reader.needs());
    declared.addAll(FactGraph.ids(reader.wants()));
    return new DeclaredFacts(this, reader.id(), declared);
  }

  /** A sink that refuses keys that {@code giver} did not declare, and fills {@code gifts}. */
  Sink givenBy(Calculator giver, List<Gift<?>> gifts) {
    Set<String> declared = FactGraph.ids(giver.gives());
    return new Sink() {
      @Override
      public <T> void give(FactKey<T> key, T value) {
        if (!declared.contains(key.id())) {
          throw new IllegalStateException(
              giver.id() + " gives " + key.id() + " without declaring it");
        }
        boolean given =
            !given(key.id()).isEmpty()
                || gifts.stream().anyMatch(g -> g.key().id().equals(key.id()));
        if (key.arity() == Arity.ONE && given) {
          throw new IllegalStateException(giver.id() + " gives " + key.id() + " twice");
        }
        gifts.add(new Gift<>(key, key.type().cast(value)));
      }
    };
  }

  /** What a part of the plan gave of {@code together} is a value of the whole. */
  synchronized void addPart(PartOfPlan part, Set<FactKey<?>> together) {
    facts
        .computeIfAbsent(PartOfPlan.FACT.id(), k -> new ArrayList<>())
        .add(new Given<>(part, "plan"));
    for (FactKey<?> key : together) {
      facts
          .computeIfAbsent(key.id(), k -> new ArrayList<>())
          .addAll(((Results) part.facts()).given(key.id()));
    }
  }

  /** What is given of these from now on is left out: all of it is there. */
  synchronized void giveNoneOf(Set<FactKey<?>> keys) {
    closed.addAll(FactGraph.ids(keys));
  }

  /** Adds what a calculator gave. */
  synchronized void add(Calculator giver, List<Gift<?>> gifts) {
    int place = places.get(giver.id());
    for (Gift<?> gift : gifts) {
      if (closed.contains(gift.key().id())) {
        continue;
      }
      List<Given<?>> all = facts.computeIfAbsent(gift.key().id(), k -> new ArrayList<>());
      int at = all.size();
      while (at > 0 && places.get(all.get(at - 1).giver()) > place) {
        at--;
      }
      all.add(at, new Given<>(gift.value(), giver.id()));
    }
  }
}
