package yardloom.kernel.source;

import java.util.Objects;

/** A value together with the source it was taken from. */
public record Cited<T>(T value, Source source) {
  public Cited {
    Objects.requireNonNull(value);
    Objects.requireNonNull(source);
  }
}
