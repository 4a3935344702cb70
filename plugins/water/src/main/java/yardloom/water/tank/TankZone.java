package yardloom.water.tank;

import java.util.List;
import java.util.Optional;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.fact.Facts;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Pressure;

/**
 * What runs in one zone while the water in the tank that feeds it sinks.
 *
 * @param number of the zone
 * @param levels full, half full and nearly empty
 * @param stop the lowest level at which the zone still runs well; empty if it never does
 * @param limit what sets that level, in words
 */
public record TankZone(
    int number, TankPlan tank, List<Level> levels, Optional<Level> stop, String limit) {
  /** The zones that a tank feeds. */
  public static final FactKey<TankZone> KEY =
      FactKey.many("water.tank-zones", TankZone.class).called("zones by the level in the tank");

  public TankZone {
    levels = List.copyOf(levels);
  }

  /**
   * One level.
   *
   * @param water depth of water in the tank
   * @param behind the pressure behind the zone valve
   * @param flow of all outlets
   * @param variation largest less least outlet flow over the largest
   */
  public record Level(
      String name,
      Length water,
      Derived<Pressure> behind,
      Derived<Flow> flow,
      Derived<Double> variation) {
    /** The same under another name. */
    public Level called(String other) {
      return new Level(other, water, behind, flow, variation);
    }
  }

  /** That of the zone; empty where it is fed by a tap. */
  public static Optional<TankZone> of(int zone, Facts facts) {
    return facts.all(KEY).stream().filter(z -> z.number() == zone).findFirst();
  }

  /** Half full: what flows and minutes elsewhere are worked out for. */
  public Level half() {
    return levels.get(1);
  }

  /** The highest stop level of all zones of the tank: below it some of its water is of no use. */
  public static Optional<Length> lowest(TankPlan tank, Facts facts) {
    return facts.all(KEY).stream()
        .filter(z -> z.tank().equals(tank))
        .map(z -> z.stop().map(Level::water).orElse(TankPlan.OUTLET))
        .max(Length::compareTo);
  }
}
