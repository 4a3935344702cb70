package yardloom.water.zone;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import yardloom.facts.Stand;
import yardloom.facts.YardFacts;
import yardloom.kernel.check.Check;
import yardloom.kernel.check.Finding;
import yardloom.kernel.check.Severity;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.source.Source;
import yardloom.water.drip.DripRun;

/**
 * Whether one valve waters plants of high and of low use by their highest crop coefficients: food
 * by FAO-56, woody herbs and ornamentals by their own class.
 */
public final class ValveMixCheck implements Check {
  /** Plants of low use lie below it: from here on use is moderate. */
  private static final double MODERATE_FROM = 0.4;

  /** From here on use is high. */
  private static final double HIGH_FROM = 0.7;

  private static final Source ORDINANCE =
      Source.read(
          "Water efficient landscape guidelines after California's model ordinance: hydrozones that"
              + " mix high and low water use plants shall not be permitted; classes by plant factor,"
              + " low to 0.3, moderate 0.4 to 0.6, high from 0.7",
          "City of Santa Ana",
          2009,
          "irrigation design plan, (e)");

  @Override
  public String id() {
    return "water.valve-mix";
  }

  @Override
  public Set<FactKey<?>> reads() {
    return Set.of(Zone.KEY, DripRun.KEY, YardFacts.STANDS);
  }

  @Override
  public List<Finding> run(Plan plan, Facts facts) {
    List<Finding> found = new ArrayList<>();
    for (Zone zone : facts.all(Zone.KEY)) {
      List<Stand> stands = stands(zone, facts);
      List<Stand> low =
          stands.stream().filter(s -> highest(s) > 0 && highest(s) < MODERATE_FROM).toList();
      List<Stand> high = stands.stream().filter(s -> highest(s) >= HIGH_FROM).toList();
      if (low.isEmpty() || high.isEmpty()) {
        continue;
      }
      Stand first = low.get(0);
      found.add(
          Finding.of(
                  id(),
                  Severity.NOTE,
                  "one valve waters "
                      + names(low)
                      + " and "
                      + names(high)
                      + ", which at their height use these shares of reference ET: what is right for the"
                      + " one is too much or too little for the other",
                  "put dry plants into a bed of their own, whose valve runs less, or keep outlets off"
                      + " them once they have grown in",
                  ORDINANCE)
              .about(first.in(), first.place()));
    }
    return found;
  }

  private static List<Stand> stands(Zone zone, Facts facts) {
    Set<ElementId> in =
        zone.runs(facts).stream()
            .flatMap(run -> run.on().waters().stream())
            .collect(Collectors.toSet());
    return facts.all(YardFacts.STANDS).stream().filter(s -> in.contains(s.in())).toList();
  }

  private static double highest(Stand stand) {
    return stand.thirst().kc().stream().mapToDouble(kc -> kc).max().orElse(0);
  }

  private static String names(List<Stand> stands) {
    return stands.stream()
        .map(s -> String.format(Locale.ROOT, "%s (%.2f)", s.plant(), highest(s)))
        .distinct()
        .sorted()
        .collect(Collectors.joining(", "));
  }
}
