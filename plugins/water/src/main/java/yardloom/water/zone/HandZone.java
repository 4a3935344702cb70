package yardloom.water.zone;

import java.util.List;
import yardloom.kernel.plan.AttributeKey;

/**
 * Beds and trees that the plan puts behind one valve, whatever their flow and need.
 *
 * @param names of elements, as the plan names them
 */
record HandZone(List<String> names) {
  /** On the plan, in the order of its valves. */
  static final AttributeKey<HandZone> KEY = new AttributeKey<>("water.hand-zone", HandZone.class);

  HandZone {
    names = List.copyOf(names);
  }
}
