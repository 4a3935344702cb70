package yardloom.water.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;
import yardloom.water.pipe.formula.Water;
import yardloom.water.tank.TankPlan;
import yardloom.water.tank.TankZone;
import yardloom.water.zone.Zone;

/**
 * Solves a zone for several levels of the water in the tank that feeds it, and finds the lowest at
 * which it still runs well: outlets differ by at most a fifth, and it gives at least half of what
 * it gives when the tank is full.
 *
 * <p>References: I. P. Wu, An assessment of hydraulic design of micro-irrigation systems, 1997:
 * outlet flows that vary by 10 to 20 percent are as even as 98 to 95 percent (abstract, read). Half
 * the flow, so that no watering takes more than twice as long: common practice.
 */
final class TankLevels {
  private static final double MOST_VARIATION = 0.20;
  private static final double LEAST_FLOW = 0.5;
  private static final double NEAR_M = 0.005;
  private static final String STOP = "too low below";

  private final ZoneNetwork network;
  private final List<PipeSize> sizes;
  private final Zone zone;
  private final TankPlan tank;

  TankLevels(ZoneNetwork network, List<PipeSize> sizes, Zone zone, TankPlan tank) {
    this.network = network;
    this.sizes = sizes;
    this.zone = zone;
    this.tank = tank;
  }

  TankZone solve() {
    List<TankZone.Level> levels = new ArrayList<>();
    levels.add(level("full", tank.body().height()));
    levels.add(level("half full", tank.body().height().times(0.5)));
    Length low = TankPlan.OUTLET.min(tank.body().height());
    levels.add(level("nearly empty", low));
    TankZone.Level full = levels.get(0);
    TankZone.Level last = levels.get(2);
    if (!runs(full, full)) {
      return new TankZone(zone.number(), tank, levels, Optional.empty(), why(full, full));
    }
    if (runs(last, full)) {
      return new TankZone(
          zone.number(), tank, levels, Optional.of(last), "water stands at its outlet");
    }
    TankZone.Level below = last;
    TankZone.Level stop = full.called(STOP);
    while (stop.water().metres() - below.water().metres() > NEAR_M) {
      TankZone.Level middle = level(STOP, stop.water().plus(below.water()).div(2));
      if (runs(middle, full)) {
        stop = middle;
      } else {
        below = middle;
      }
    }
    return new TankZone(zone.number(), tank, levels, Optional.of(stop), why(below, full));
  }

  private static boolean runs(TankZone.Level level, TankZone.Level full) {
    return full.flow().value().cubicMetresPerSecond() > 0
        && level.variation().value() <= MOST_VARIATION
        && level.flow().value().ratioTo(full.flow().value()) >= LEAST_FLOW;
  }

  private static String why(TankZone.Level level, TankZone.Level full) {
    if (full.flow().value().cubicMetresPerSecond() <= 0) {
      return "no outlet gives water";
    }
    return level.variation().value() > MOST_VARIATION
        ? "outlets differ by more than 20 percent"
        : "it gives half of what a full tank gives";
  }

  private TankZone.Level level(String name, Length water) {
    Pressure pressure = tank.pressure(water);
    ZoneNetwork.Solved solved = network.solve(sizes, flow -> Optional.of(pressure));
    return new TankZone.Level(
        name,
        water,
        why("pressure behind the zone valve in the network of the zone", water)
            .gives(Water.pressure(Length.metres(solved.behindM()))),
        why("sum of the outlets' flows in the network of the zone", water)
            .gives(Flow.cubicMetresPerSecond(solved.flowM3s())),
        why("(largest − least outlet flow) / largest, in the whole zone", water)
            .gives(network.variation(solved)));
  }

  private Derived.Builder why(String what, Length water) {
    return Derived.by(what, LineCalculator.METHOD)
        .from("beds", zone.beds().size())
        .from("water in the tank", water)
        .from("foot of the tank above its ground", tank.body().stand());
  }
}
