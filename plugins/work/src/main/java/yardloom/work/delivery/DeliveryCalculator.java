package yardloom.work.delivery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.YardFacts;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.DropPile;
import yardloom.kernel.fact.Calculator;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.fact.Sink;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.unit.Volume;
import yardloom.work.labour.WorkSettings;
import yardloom.work.phase.PhaseTime;

/**
 * Gives the day of every truckload: full ones first, the last of an item holds the rest. What has
 * no drop zone of its own is tipped on the first one.
 */
public final class DeliveryCalculator implements Calculator {
  @Override
  public String id() {
    return "work.deliveries";
  }

  @Override
  public Set<FactKey<?>> needs() {
    return Set.of(PhaseTime.FACT, YardFacts.LOADS);
  }

  @Override
  public Set<FactKey<?>> wants() {
    return Set.of(YardFacts.PILES);
  }

  @Override
  public Set<FactKey<?>> gives() {
    return Set.of(Delivery.FACT);
  }

  /** One load of a phase. */
  private record Truck(String item, Volume load, Optional<String> spot) {}

  @Override
  public void compute(Plan plan, Facts in, Sink out) {
    WorkSettings work = WorkSettings.of(plan);
    int number = 1;
    for (PhaseTime phase : in.all(PhaseTime.FACT)) {
      List<Truck> trucks = new ArrayList<>();
      for (BulkLoads loads : in.all(YardFacts.LOADS)) {
        if (loads.phase() == phase.phase().id()) {
          trucks.addAll(trucks(loads, spot(loads.item(), in.all(YardFacts.PILES))));
        }
      }
      List<DeliveryDays.Time> times =
          DeliveryDays.of(
              trucks.stream()
                  .map(t -> new DeliveryDays.Load(t.spot().orElse(""), t.load().cubicMetres()))
                  .toList(),
              phase.gone(),
              phase.gone() + phase.ends() - phase.begins());
      for (int i = 0; i < trucks.size(); i++) {
        Truck truck = trucks.get(i);
        int day = phase.firstDay() + times.get(i).day();
        out.give(
            Delivery.FACT,
            new Delivery(
                number++,
                truck.item(),
                phase.phase().id(),
                truck.load(),
                truck.spot(),
                day,
                work.start().map(s -> work.workdays().day(s, day)),
                times.get(i).when(),
                times.get(i).isAfterOther()));
      }
    }
  }

  private static List<Truck> trucks(BulkLoads loads, Optional<String> spot) {
    List<Truck> trucks = new ArrayList<>();
    Volume left = loads.order().value();
    int count = loads.likely().value();
    for (int i = 0; i < count; i++) {
      // The last takes what is left, also when that is a little more than a load.
      Volume load = i == count - 1 ? left : left.min(loads.each().value());
      trucks.add(new Truck(loads.item(), load, spot));
      left = left.minus(load);
    }
    return trucks;
  }

  private static Optional<String> spot(String item, List<DropPile> piles) {
    return DropPile.taking(item, piles).map(p -> p.spot().name());
  }
}
