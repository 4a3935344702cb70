package yardloom.water.model;

import yardloom.facts.ClimateNormals;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.AttributeKey;

/** The climate as the plan states it, and what water makes of it. */
public final class WaterKeys {
  /** The climate of the yard, from the catalogue or given in the plan. */
  public static final AttributeKey<ClimateNormals> CLIMATE =
      new AttributeKey<>("water.climate", ClimateNormals.class);

  /** Rain by the day. */
  public static final AttributeKey<DailyRain> DAILY_RAIN =
      new AttributeKey<>("water.daily-rain", DailyRain.class);

  /** Monthly evapotranspiration and effective rain. */
  public static final FactKey<MonthlyWeather> WEATHER =
      FactKey.one("water.weather", MonthlyWeather.class).called("weather by month");

  private WaterKeys() {}
}
