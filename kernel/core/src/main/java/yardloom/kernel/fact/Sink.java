package yardloom.kernel.fact;

/** Takes what a calculator gives. */
public interface Sink {
  /**
   * Gives one value.
   *
   * @throws IllegalStateException if the calculator did not declare the key, or gives a ONE fact
   *     twice
   */
  <T> void give(FactKey<T> key, T value);
}
