package yardloom.water.model;

import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.AttributeKey;
import yardloom.kernel.unit.Flow;

/** What water hangs on the plan and its beds, and the facts that stay within the plugin. */
public final class WaterKeys {
  /** The dripline of a bed. */
  public static final AttributeKey<DripChoice> DRIP =
      new AttributeKey<>("water.drip", DripChoice.class);

  /** What the water point delivers at the pressure that dripline works at. */
  public static final AttributeKey<Flow> SUPPLY = new AttributeKey<>("water.supply", Flow.class);

  /** The lawn that the garden takes the place of. */
  public static final AttributeKey<FormerLawn> FORMER_LAWN =
      new AttributeKey<>("water.former-lawn", FormerLawn.class);

  /** Monthly evapotranspiration and effective rain. */
  public static final FactKey<MonthlyWeather> WEATHER =
      FactKey.one("water.weather", MonthlyWeather.class).called("weather by month");

  /** Dripline by bed. */
  public static final FactKey<DripRun> DRIP_RUNS =
      FactKey.many("water.drip", DripRun.class).called("dripline");

  /** Beds that are watered together. */
  public static final FactKey<Zone> ZONES =
      FactKey.many("water.zones", Zone.class).called("watering zones");

  private WaterKeys() {}
}
