package yardloom.materials.load;

import java.util.List;
import java.util.Optional;
import yardloom.facts.BillLine;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.LocalRate.Kind;
import yardloom.facts.region.Region;
import yardloom.facts.region.Spread;
import yardloom.facts.work.WorkPhase;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;
import yardloom.materials.mulch.OwnBulk;

/** Truck sizes and densities: what the plan says, else its region, else the shipped row. */
public final class BulkRates {
  /** On the plan, any number: rates of loads and densities. */
  public static final AttributeKey<LocalRate> KEY =
      new AttributeKey<>("materials.local-rate", LocalRate.class);

  private final List<LocalRate> own;
  private final List<String> named;

  private BulkRates(List<LocalRate> own, List<String> named) {
    this.own = own;
    this.named = named;
  }

  public static BulkRates of(Plan plan, Optional<Region> region) {
    return new BulkRates(
        Region.ownFirst(region, plan.attributes().all(KEY)),
        plan.attributes().all(OwnBulk.KEY).stream().map(e -> e.value().name()).toList());
  }

  /** The bulk material, shipped or of the plan's own, that an item of the bill is. */
  Optional<String> materialOf(String item) {
    return BulkData.materialOf(item)
        .or(() -> named.stream().filter(BillLine.stem(item)::equalsIgnoreCase).findFirst());
  }

  /** Cubic yards of one truckload. */
  public Spread cubicYardsPerLoad(String material) {
    return own(Kind.LOAD, material).orElseGet(() -> BulkData.cubicYardsPerLoad(material));
  }

  /** Pounds per cubic yard as delivered. */
  Spread poundsPerCubicYard(String material) {
    return own(Kind.DENSITY, material).orElseGet(() -> BulkData.poundsPerCubicYard(material));
  }

  BulkLoads loads(String item, String material, WorkPhase phase, Derived<Volume> order) {
    return Loads.of(item, phase, order, cubicYardsPerLoad(material), poundsPerCubicYard(material));
  }

  private Optional<Spread> own(Kind kind, String item) {
    return own.stream()
        .filter(r -> r.kind() == kind && r.item().equals(item))
        .map(LocalRate::value)
        .findFirst();
  }
}
