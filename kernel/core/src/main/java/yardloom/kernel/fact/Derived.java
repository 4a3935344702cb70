package yardloom.kernel.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.source.Source;

/**
 * A value with the reason for it: formula, source and named inputs, which may be derived
 * themselves.
 *
 * <p>Tables keep derived values in their cells, so that {@code explain} and the printed calculation
 * appendix need no second bookkeeping. No text is built until somebody asks.
 *
 * @param formula the relation in words or symbols, such as {@code volume = area × depth}
 */
public record Derived<T>(T value, String formula, Source source, List<Input> inputs) {

  /**
   * One input of a formula.
   *
   * @param value a quantity, number, text, or another {@link Derived}
   * @param place the script line it was given on, or {@link SourceRef#NONE}
   */
  public record Input(String name, Object value, SourceRef place) {
    public Input {
      Objects.requireNonNull(value);
    }
  }

  public Derived {
    Objects.requireNonNull(value);
    Objects.requireNonNull(source);
    inputs = List.copyOf(inputs);
  }

  /** Starts a derivation by {@code formula}. */
  public static Builder by(String formula, Source source) {
    return new Builder(formula, source);
  }

  /** A value that the plan gives as it is. */
  public static <T> Derived<T> given(T value, String what, SourceRef place) {
    return new Derived<>(value, what, Source.plan(what), List.of(new Input(what, value, place)));
  }

  /** The same reason for a value made from this one. */
  public <R> Derived<R> map(Function<T, R> change) {
    return new Derived<>(change.apply(value), formula, source, inputs);
  }

  /** Collects the inputs of a derivation. */
  public static final class Builder {
    private final String formula;
    private final Source source;
    private final List<Input> inputs = new ArrayList<>();

    private Builder(String formula, Source source) {
      this.formula = formula;
      this.source = source;
    }

    public Builder from(String name, Object value) {
      return from(name, value, SourceRef.NONE);
    }

    public Builder from(String name, Object value, SourceRef place) {
      inputs.add(new Input(name, value, place));
      return this;
    }

    public <T> Derived<T> gives(T value) {
      return new Derived<>(value, formula, source, inputs);
    }
  }
}
