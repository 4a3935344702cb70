package yardloom.site.revision;

import java.time.LocalDate;
import yardloom.kernel.plan.AttributeKey;

/**
 * One state of the plan after its issue.
 *
 * @param name its mark, such as {@code A}
 * @param what what was changed, one line
 */
public record Revision(String name, LocalDate date, String what) {
  /** On the plan, any number, in the order of their dates. */
  public static final AttributeKey<Revision> KEY =
      new AttributeKey<>("site.revision", Revision.class);
}
