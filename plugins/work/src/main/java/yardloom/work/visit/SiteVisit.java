package yardloom.work.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import yardloom.facts.BillLine;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.TimeSpan;

/**
 * A run of working days without a gap in which the crew is there, or the round of visits by which
 * it looks after what it planted.
 *
 * @param number from 1, in order of the first day
 * @param phases what is done, in working order; empty where only kinds out of season are planted
 * @param kinds what is planted on a later day than its phase
 * @param days working days on the calendar, waiting included
 * @param hours likely hours of one person
 * @param lines what of the bill must be there before
 * @param loads truckloads among it
 * @param cost likely cost of work and what is bought; empty where nothing is priced
 */
public record SiteVisit(
    int number,
    List<WorkPhase> phases,
    SortedSet<String> kinds,
    int days,
    Optional<LocalDate> from,
    Optional<LocalDate> to,
    Derived<TimeSpan> hours,
    List<BillLine> lines,
    List<BulkLoads> loads,
    Optional<Derived<Money>> cost) {
  /** The visits in order. */
  public static final FactKey<SiteVisit> FACT =
      FactKey.many("work.site-visits", SiteVisit.class).called("visits of the crew").byPart();

  public SiteVisit {
    phases = List.copyOf(phases);
    lines = List.copyOf(lines);
    loads = List.copyOf(loads);
  }
}
