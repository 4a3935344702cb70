package yardloom.kernel.fact;

import java.util.List;
import java.util.Optional;

/** Facts as a calculator, check, painter or table maker reads them. */
public interface Facts {
  /**
   * The value of a ONE fact that the reader declared as needed.
   *
   * @throws IllegalStateException if the reader did not declare it, or it is a MANY fact
   */
  <T> T get(FactKey<T> key);

  /** The value of a ONE fact, if a loaded calculator gave it. */
  <T> Optional<T> find(FactKey<T> key);

  /** The values of a MANY fact, in the order of their givers' ids; empty if there are none. */
  <T> List<T> all(FactKey<T> key);
}
