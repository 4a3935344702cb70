package yardloom.work.phase;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import yardloom.facts.BillGroup;
import yardloom.facts.BillLine;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.ItemSource;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.unit.Months;
import yardloom.work.labour.Workdays;

/** What a phase needs of the bill, and how long ahead. */
public final class PhaseOrders {
  private static final int UNKNOWN_LEAD = 7;

  private PhaseOrders() {}

  /**
   * The lines of the bill that a phase uses. Mulch that is ordered for trees and what covers the
   * ground together is needed in the first of both.
   *
   * @param all the phases in working order
   */
  public static List<BillLine> neededIn(PhaseTime time, List<PhaseTime> all, List<BillLine> bill) {
    return bill.stream().filter(line -> phaseOf(line, all) == time.phase().id()).toList();
  }

  /** The phase before which a line must be there. */
  public static WorkPhase phaseOf(BillLine line, List<PhaseTime> all) {
    if (line.phase() != WorkPhase.TREES || line.group() != BillGroup.SHEET_MULCH) {
      return line.phase();
    }
    return all.stream()
        .map(t -> t.phase().id())
        .filter(p -> p == WorkPhase.TREES || p == WorkPhase.SHEET)
        .findFirst()
        .orElse(line.phase());
  }

  /**
   * When a line must be ordered: its lead before its own day, the visit that plants it, or else
   * before its phase begins, and not on a weekend; empty where no date is set.
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
    Optional<LocalDate> used =
        line.on().isPresent()
            ? time.start().map(start -> Months.next(line.on().get(), start))
            : visit.or(time::start);
    return PhaseSchedule.orderBy(used, leadDays(line.item(), facts)).map(PhaseOrders::open);
  }

  /** That day, or the Friday before a weekend on which nobody takes orders. */
  private static LocalDate open(LocalDate by) {
    LocalDate day = by;
    while (Workdays.ALL.isOff(day)) {
      day = day.minusDays(1);
    }
    return day;
  }

  /** The longest lead of an item's sources; a week where none is known. */
  public static int leadDays(String item, Facts facts) {
    return facts.all(YardFacts.SUPPLIES).stream()
        .filter(s -> s.item().equals(item))
        .mapToInt(ItemSource::leadDays)
        .max()
        .orElse(UNKNOWN_LEAD);
  }
}
