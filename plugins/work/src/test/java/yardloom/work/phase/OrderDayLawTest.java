package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import yardloom.facts.BillLine;
import yardloom.facts.PlanKit;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.Results;
import yardloom.kernel.plan.Element.BedUse;
import yardloom.work.labour.WorkWords;

/** Whenever the work begins, orders are due on a day on which somebody takes them, and in time. */
class OrderDayLawTest {
  @Property(tries = 21, seed = "20261127")
  void orders_areDueOnWeekdaysBeforeTheirLead(
      @ForAll @IntRange(min = 1, max = 28) int day, @ForAll @IntRange(min = 3, max = 50) int feet) {
    PlanKit kit = PlanKit.us();
    kit.bed("beans", BedUse.PERENNIAL, PlanKit.box(0, 0, feet, 4));
    String start = LocalDate.of(2027, 2, day).toString();
    WorkWords.work(kit.words(), 2, 6, 0, start, null, null, null);
    Results r = PlanKit.run(kit.plan());
    List<PhaseTime> phases = r.all(PhaseTime.FACT);
    Set<String> items = new TreeSet<>();
    for (PhaseTime time : phases) {
      for (BillLine line : PhaseOrders.neededIn(time, phases, r.all(YardFacts.BILL))) {
        items.add(line.item());
        LocalDate by = PhaseOrders.orderBy(line, time, r).orElseThrow();
        assertTrue(by.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0, line.item() + " " + by);
        // Two days of a weekend are all that may be added to the lead.
        long ahead = time.start().orElseThrow().toEpochDay() - by.toEpochDay();
        int lead = PhaseOrders.leadDays(line.item(), r);
        assertTrue(ahead >= lead && ahead <= lead + 2, line.item() + " " + ahead);
      }
    }
    assertEquals(Set.of("cardboard, sheets", "compost", "wood-chip mulch"), items);
  }
}
