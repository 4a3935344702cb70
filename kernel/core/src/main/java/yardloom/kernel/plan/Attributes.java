package yardloom.kernel.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import yardloom.kernel.problem.SourceRef;

/** Values that plugins attached, each with the script place it came from. Immutable. */
public final class Attributes {
  /** Nothing attached. */
  public static final Attributes NONE = new Attributes(null, Map.of());

  /**
   * One attached value.
   *
   * @param part the part of the plan in which it was said, as {@link Draft#inPart} names it; empty
   *     outside of any
   */
  public record Entry<T>(T value, SourceRef place, String part) {}

  /** Whose they are; null for those of the plan. */
  private final ElementId owner;

  private final Map<String, List<Entry<?>>> entries;

  private Attributes(ElementId owner, Map<String, List<Entry<?>>> entries) {
    this.owner = owner;
    this.entries = entries;
  }

  /** The values under {@code key} in the order they were written. */
  public <T> List<Entry<T>> all(AttributeKey<T> key) {
    Reads.note(Reads.Topic.ATTRIBUTE, new Reads.Attribute(owner, key));
    List<Entry<T>> found = new ArrayList<>();
    for (Entry<?> e : entries.getOrDefault(key.id(), List.of())) {
      found.add(new Entry<>(key.type().cast(e.value()), e.place(), e.part()));
    }
    return List.copyOf(found);
  }

  /** The last value under {@code key}. */
  public <T> Optional<T> get(AttributeKey<T> key) {
    List<Entry<T>> found = all(key);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1).value());
  }

  /** The same with each value and place changed by {@code change}; itself if nothing changes. */
  public Attributes mapped(UnaryOperator<Object> change) {
    Map<String, List<Entry<?>>> changed = new TreeMap<>();
    boolean any = false;
    for (Map.Entry<String, List<Entry<?>>> under : entries.entrySet()) {
      List<Entry<?>> list = new ArrayList<>();
      for (Entry<?> e : under.getValue()) {
        Object value = change.apply(e.value());
        SourceRef place = (SourceRef) change.apply(e.place());
        any |= value != e.value() || !place.equals(e.place());
        list.add(new Entry<>(value, place, e.part()));
      }
      changed.put(under.getKey(), List.copyOf(list));
    }
    return any ? new Attributes(owner, changed) : this;
  }

  /** The same with {@code value} alone under {@code key}. */
  <T> Attributes with(AttributeKey<T> key, T value, SourceRef place) {
    Map<String, List<Entry<?>>> changed = new TreeMap<>(entries);
    changed.put(key.id(), List.of(new Entry<>(key.type().cast(value), place, "")));
    return new Attributes(owner, changed);
  }

  /** Those with the same values, places and owner, so that elements can be told alike. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Attributes that
            && Objects.equals(that.owner, owner)
            && that.entries.equals(entries);
  }

  @Override
  public int hashCode() {
    return entries.keySet().hashCode() * 31 + Objects.hashCode(owner);
  }

  /** Collects attributes while a script runs. */
  public static final class Builder {
    private final Map<String, List<Entry<?>>> entries = new TreeMap<>();
    private String part = "";

    /** What is added from now on is said in that part of the plan. */
    void part(String newPart) {
      part = newPart;
    }

    /** Adds one more value under {@code key}. */
    public <T> Builder add(AttributeKey<T> key, T value, SourceRef place) {
      entries
          .computeIfAbsent(key.id(), k -> new ArrayList<>())
          .add(new Entry<>(key.type().cast(value), place, part));
      return this;
    }

    public <T> boolean has(AttributeKey<T> key) {
      return entries.containsKey(key.id());
    }

    /** The values added so far under {@code key}, in the order they were written. */
    public <T> List<Entry<T>> all(AttributeKey<T> key) {
      return new Attributes(null, entries).all(key);
    }

    /**
     * What was said before of the same thing in the file of {@code place}; a later file may say
     * otherwise, one file does not say a thing twice.
     */
    public <T> Optional<Entry<T>> saidInFile(
        AttributeKey<T> key, SourceRef place, Predicate<T> same) {
      return all(key).stream()
          .filter(e -> e.place().file().equals(place.file()) && same.test(e.value()))
          .findFirst();
    }

    /** Those of the plan itself. */
    Attributes build() {
      return build(null);
    }

    Attributes build(ElementId owner) {
      Map<String, List<Entry<?>>> copy = new TreeMap<>();
      entries.forEach((k, v) -> copy.put(k, List.copyOf(v)));
      return new Attributes(owner, copy);
    }
  }
}
