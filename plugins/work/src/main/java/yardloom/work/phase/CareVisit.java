package yardloom.work.phase;

import java.time.LocalDate;
import yardloom.kernel.fact.FactKey;

/**
 * A day on which the crew looks after what it planted.
 *
 * @param number from 1, by date
 * @param why what calls for it
 */
public record CareVisit(int number, LocalDate date, String why) {
  /** Visits in order of date; none where the work has no first day. */
  public static final FactKey<CareVisit> FACT =
      FactKey.many("work.care-visits", CareVisit.class)
          .called("visits to look after the plants")
          .byPart();
}
