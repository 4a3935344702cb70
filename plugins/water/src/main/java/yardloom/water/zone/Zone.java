package yardloom.water.zone;

import java.util.List;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.table.NameRuns;
import yardloom.kernel.unit.Flow;
import yardloom.water.drip.DripRun;

/**
 * Beds behind one valve.
 *
 * @param number from 1
 * @param light what the beds have of the sun, in the words of the light scheme; empty if unknown
 * @param flow of all its beds together where no tube takes pressure
 * @param limit what the supply gives
 */
public record Zone(
    int number, String light, List<ElementId> beds, Derived<Flow> flow, Derived<Flow> limit) {
  /** Beds that are watered together. */
  public static final FactKey<Zone> KEY =
      FactKey.many("water.zones", Zone.class).called("watering zones");

  public Zone {
    beds = List.copyOf(beds);
  }

  /** Whether the plan makes zones of its own; those come first. */
  public static boolean areByHand(Plan plan) {
    return !plan.attributes().all(HandZone.KEY).isEmpty();
  }

  /** The zone of that number, which is one of the plan's. */
  public static Zone of(int number, Facts facts) {
    return facts.all(KEY).stream().filter(z -> z.number() == number).findFirst().orElseThrow();
  }

  /** The dripline in its beds, in the order of all dripline. */
  public List<DripRun> runs(Facts facts) {
    return facts.all(DripRun.KEY).stream().filter(run -> beds.contains(run.bed())).toList();
  }

  /** Its beds in words. */
  public String names() {
    return NameRuns.text(beds.stream().map(ElementId::name).toList());
  }
}
