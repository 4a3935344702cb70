package yardloom.facts;

import java.time.MonthDay;
import java.util.Optional;
import yardloom.kernel.problem.SourceRef;

/**
 * Frost days that the plan says beside its climate, such as with its working days. They are one
 * source of {@link FrostDates} among others; nobody else reads them.
 *
 * @param last the usual last frost of spring, if said
 * @param first the usual first frost of fall, if said
 * @param place where
 */
public record FrostSaid(Optional<MonthDay> last, Optional<MonthDay> first, SourceRef place) {}
