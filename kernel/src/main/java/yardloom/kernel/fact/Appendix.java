package yardloom.kernel.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A derivation written out as lines of text, inputs indented below what they give. */
public final class Appendix {
  /** Deeper derivations are cut off; a chain this long cannot be read anyway. */
  private static final int MAX_DEPTH = 8;

  private Appendix() {}

  /**
   * The lines of {@code derived}.
   *
   * @param show turns a quantity or number into text in the reader's units
   */
  public static List<String> lines(String name, Derived<?> derived, Function<Object, String> show) {
    List<String> lines = new ArrayList<>();
    write(name, derived, show, 0, lines);
    return List.copyOf(lines);
  }

  private static void write(
      String name,
      Derived<?> derived,
      Function<Object, String> show,
      int depth,
      List<String> lines) {
    String indent = "  ".repeat(depth);
    lines.add(indent + name + " = " + show.apply(derived.value()));
    lines.add(indent + "  by " + derived.formula() + " [" + derived.source().cite() + "]");
    if (depth >= MAX_DEPTH) {
      return;
    }
    for (Derived.Input input : derived.inputs()) {
      if (input.value() instanceof Derived<?> inner) {
        write(input.name(), inner, show, depth + 1, lines);
      } else {
        String at = input.place().line() == 0 ? "" : " (" + input.place() + ")";
        lines.add(indent + "  " + input.name() + " = " + show.apply(input.value()) + at);
      }
    }
  }
}
