package yardloom.kernel.table;

import java.util.List;
import java.util.Objects;

/**
 * How the report shows a table.
 *
 * @param audience whose it is
 * @param charts what of it is drawn as well
 */
public record Reading(Audience audience, List<Chart> charts) {
  /** A table that nobody said anything about. */
  public static final Reading PLAIN = new Reading(Audience.CONTRACTOR, List.of());

  public Reading {
    Objects.requireNonNull(audience);
    charts = List.copyOf(charts);
  }
}
