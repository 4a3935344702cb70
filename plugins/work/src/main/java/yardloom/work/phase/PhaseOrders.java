package yardloom.work.phase;

import java.util.List;
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

  /** The longest lead of an item's sources; a week where none is known. */
  public static int leadDays(String item, Facts facts) {
    return facts.all(YardFacts.SUPPLIES).stream()
        .filter(s -> s.item().equals(item))
        .mapToInt(Supply::leadDays)
        .max()
        .orElse(UNKNOWN_LEAD);
  }
}
