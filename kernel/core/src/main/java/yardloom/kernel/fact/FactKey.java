package yardloom.kernel.fact;

import java.util.Objects;

/**
 * Names a fact.
 *
 * @param id concept and name, such as {@code sun.hours}
 * @param arity how many calculators may give it
 * @param words what the trade calls it, as findings say it
 */
public record FactKey<T>(String id, Class<T> type, Arity arity, String words)
    implements Comparable<FactKey<?>> {

  /** How many givers a fact has. */
  public enum Arity {
    /** Exactly one; a second is a loading error. */
    ONE,
    /** Any number; whoever reads it runs after all of them. */
    MANY
  }

  public FactKey {
    Objects.requireNonNull(type);
    if (!id.matches("[a-z]+(\\.[a-z-]+)+")) {
      throw new IllegalArgumentException("fact id \"" + id + "\" is not concept.name");
    }
  }

  public static <T> FactKey<T> one(String id, Class<T> type) {
    return new FactKey<>(id, type, Arity.ONE, id.replaceAll("[.-]", " "));
  }

  public static <T> FactKey<T> many(String id, Class<T> type) {
    return new FactKey<>(id, type, Arity.MANY, id.replaceAll("[.-]", " "));
  }

  /** The same fact with other words than its id. */
  public FactKey<T> called(String otherWords) {
    return new FactKey<>(id, type, arity, otherWords);
  }

  @Override
  public int compareTo(FactKey<?> other) {
    return id.compareTo(other.id);
  }

  @Override
  public String toString() {
    return id;
  }
}
