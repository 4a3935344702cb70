package yardloom.kernel.plan;

import java.util.Comparator;

/** Kind and name of an element; unique within a plan. */
public record ElementId(ElementKind kind, String name) implements Comparable<ElementId> {
  private static final Comparator<ElementId> ORDER =
      Comparator.comparing(ElementId::kind).thenComparing(ElementId::name, new NaturalOrder());

  @Override
  public int compareTo(ElementId other) {
    return ORDER.compare(this, other);
  }

  /** Whether {@code said} means it: its name, or kind and name as {@link #toString} has them. */
  public boolean isCalled(String said) {
    return name.equals(said) || toString().equals(said);
  }

  /** {@code bed "south"}. */
  @Override
  public String toString() {
    return kind.word() + " \"" + name + "\"";
  }
}
