package yardloom.kernel.fact;

import java.util.Objects;

/**
 * Names a fact.
 *
 * @param id concept and name, such as {@code sun.hours}
 * @param arity how many calculators may give it
 */
public record FactKey<T>(String id, Class<T> type, Arity arity) implements Comparable<FactKey<?>> {

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
    return new FactKey<>(id, type, Arity.ONE);
  }

  public static <T> FactKey<T> many(String id, Class<T> type) {
    return new FactKey<>(id, type, Arity.MANY);
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
