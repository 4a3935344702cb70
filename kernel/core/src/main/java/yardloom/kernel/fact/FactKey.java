package yardloom.kernel.fact;

import java.util.Objects;

/**
 * Names a fact.
 *
 * @param id concept and name, such as {@code sun.hours}
 * @param arity how many calculators may give it
 * @param words what the trade calls it, as findings say it
 * @param together whether its values are those of all parts of the plan, one part after the other,
 *     where a plan is made in parts
 */
public record FactKey<T>(String id, Class<T> type, Arity arity, String words, boolean together)
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
    return new FactKey<>(id, type, Arity.ONE, id.replaceAll("[.-]", " "), false);
  }

  public static <T> FactKey<T> many(String id, Class<T> type) {
    return new FactKey<>(id, type, Arity.MANY, id.replaceAll("[.-]", " "), false);
  }

  /** The same fact with other words than its id. */
  public FactKey<T> called(String otherWords) {
    return new FactKey<>(id, type, arity, otherWords, together);
  }

  /**
   * The same fact, worked out for each part of a plan alone: of the whole plan it is the values of
   * all parts, one after the other.
   */
  public FactKey<T> byPart() {
    if (arity != Arity.MANY) {
      throw new IllegalArgumentException(id + " has one value, which cannot be that of all parts");
    }
    return new FactKey<>(id, type, arity, words, true);
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
