package yardloom.work.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.Supply;
import yardloom.kernel.fact.Facts;

/** What a phase needs of the bill, and how long ahead. */
public final class PhaseOrders {
  private static final int UNKNOWN_LEAD = 7;

  private PhaseOrders() {}

  /** The lines of the bill that a phase uses. */
  public static List<BillLine> neededIn(PhaseTime time, List<BillLine> bill) {
    return bill.stream().filter(line -> line.phase() == time.phase().id()).toList();
  }

  /**
   * When a line must be ordered: its lead before the visit that plants it, or else before its phase
   * begins; empty where no date is set.
   */
  public static Optional<LocalDate> orderBy(BillLine line, PhaseTime time, Facts facts) {
    Optional<LocalDate> visit =
        line.plant()
            .flatMap(
                plant ->
                    facts.all(PlantingVisit.FACT).stream()
                        .filter(v -> v.kinds().containsKey(plant))
                        .map(PlantingVisit::date)
                        .findFirst());
    return PhaseSchedule.orderBy(visit.or(time::start), leadDays(line.item(), facts));
  }

  /** The longest lead of an item's sources; a week where none is known. */
  public static int leadDays(String item, Facts facts) {
    return facts.all(YardFacts.SUPPLIES).stream()
        .filter(s -> s.item().equals(item))
        .mapToInt(Supply::leadDays)
        .max()
        .orElse(UNKNOWN_LEAD);
  }
}
