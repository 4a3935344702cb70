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

  /** The name as a title, {@code South}; a bare number or letter gets its kind before it. */
  public String title() {
    return name.length() <= 2 ? capital(kind.word()) + " " + name : capital(name);
  }

  private static String capital(String text) {
    if (text.isEmpty()) {
      return text;
    }
    int first = text.codePointAt(0);
    return new StringBuilder()
        .appendCodePoint(Character.toTitleCase(first))
        .append(text.substring(Character.charCount(first)))
        .toString();
  }

  /** {@code bed "south"}. */
  @Override
  public String toString() {
    return kind.word() + " \"" + name + "\"";
  }
}
