package yardloom.work.stage;

import java.time.LocalDate;
import java.util.Optional;
import yardloom.kernel.plan.AttributeKey;

/**
 * A stage of the work.
 *
 * @param from its first day, if the plan says
 * @param built whether all of it stands already
 */
record Stage(String name, Optional<LocalDate> from, boolean built) {
  /** On the plan, in the order in which they are made. */
  static final AttributeKey<Stage> KEY = new AttributeKey<>("work.stage", Stage.class);
}
