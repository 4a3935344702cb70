package yardloom.kernel.plan;

import java.util.Objects;

/**
 * Names something a plugin hangs on an element or on the plan. The kernel carries the value without
 * looking at it.
 *
 * @param id plugin and name, such as {@code planting.choice}
 */
public record AttributeKey<T>(String id, Class<T> type) {
  public AttributeKey {
    Objects.requireNonNull(type);
    if (!id.matches("[a-z]+(\\.[a-z-]+)+")) {
      throw new IllegalArgumentException("attribute id \"" + id + "\" is not plugin.name");
    }
  }
}
