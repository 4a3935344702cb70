package yardloom.kernel.fact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * A calculation appendix: derivations written out once each, numbered, inputs before what they
 * give.
 *
 * <p>Two derivations that say the same (value, formula, source and inputs) are one entry, so that a
 * yard with twenty equal beds does not print twenty equal sums. Not thread-safe.
 */
public final class Appendix {
  private final Function<Object, String> show;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final Map<Derived<?>, Integer> written = new IdentityHashMap<>();
  private final List<Entry> entries = new ArrayList<>();
  private final Map<String, Integer> sources = new LinkedHashMap<>();

  /**
   * One derivation.
   *
   * @param number counts from 1 in the order in which entries can be worked out
   * @param name what it is called where it was first met
   * @param source the number of its source, from 1
   * @param inputs such as {@code depth = 4.00 in (plan.groovy:9:3)} or {@code area = 88 sq ft [3]}
   */
  public record Entry(
      int number, String name, String value, String formula, int source, List<String> inputs) {
    public Entry {
      inputs = List.copyOf(inputs);
    }
  }

  /**
   * An empty appendix.
   *
   * @param show turns a quantity, number or text into what the reader sees
   */
  public Appendix(Function<Object, String> show) {
    this.show = show;
  }

  /** Writes a derivation and all it rests on; returns its number. */
  public int add(String name, Derived<?> derived) {
    // Many numbers rest on the same ones; what they rest on is walked once only.
    Integer before = written.get(derived);
    if (before == null) {
      before = write(name, derived);
      written.put(derived, before);
    }
    return before;
  }

  private int write(String name, Derived<?> derived) {
    List<String> inputs = new ArrayList<>();
    for (Derived.Input input : derived.inputs()) {
      if (input.value() instanceof Derived<?> inner) {
        int number = add(input.name(), inner);
        inputs.add(input.name() + " = " + show.apply(inner.value()) + " [" + number + "]");
      } else {
        String at = input.place().line() == 0 ? "" : " (" + input.place() + ")";
        inputs.add(input.name() + " = " + show.apply(input.value()) + at);
      }
    }
    String cite = derived.source().cite();
    int source = sources.computeIfAbsent(cite, c -> sources.size() + 1);
    String value = show.apply(derived.value());
    String key = value + "\n" + derived.formula() + "\n" + source + "\n" + inputs;
    Integer known = numbers.get(key);
    if (known != null) {
      return known;
    }
    int number = entries.size() + 1;
    numbers.put(key, number);
    entries.add(new Entry(number, name, value, derived.formula(), source, inputs));
    return number;
  }

  /** The entries so far, by number. */
  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  /** The sources so far; the first has number 1. */
  public List<String> sources() {
    return List.copyOf(sources.keySet());
  }
}
