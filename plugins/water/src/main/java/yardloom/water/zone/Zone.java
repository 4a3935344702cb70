package yardloom.water.zone;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.ElementId;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.TimeSpan;

/**
 * Beds behind one valve.
 *
 * @param number from 1
 * @param flow of all its beds together
 * @param limit what the supply gives
 * @param weekly run time a week in the peak month: that of its thirstiest bed
 */
public record Zone(
    int number,
    List<ElementId> beds,
    Derived<Flow> flow,
    Derived<Flow> limit,
    Optional<Derived<TimeSpan>> weekly) {
  /** Beds that are watered together. */
  public static final FactKey<Zone> KEY =
      FactKey.many("water.zones", Zone.class).called("watering zones");

  /** What the water point delivers at the pressure that dripline works at. */
  public static final AttributeKey<Flow> SUPPLY = new AttributeKey<>("water.supply", Flow.class);

  public Zone {
    beds = List.copyOf(beds);
  }
}
