package yardloom.facts;

import yardloom.kernel.fact.FactKey;

/** The facts that plugins share. A new one needs a giver and a reader in the same change. */
public final class YardFacts {
  /** Monthly climate at the site; given by climate, read by sun, planting and water. */
  public static final FactKey<ClimateNormals> CLIMATE =
      FactKey.one("climate.normals", ClimateNormals.class).called("climate");

  /** Evapotranspiration of short grass by month; given by climate, read by water. */
  public static final FactKey<ReferenceEt> REFERENCE_ET =
      FactKey.one("climate.reference-et", ReferenceEt.class).called("reference evapotranspiration");

  /** Rain of every day of a year or more; given by climate, read by water. */
  public static final FactKey<DailyRain> DAILY_RAIN =
      FactKey.one("climate.daily-rain", DailyRain.class).called("rain by the day");

  /** When frost is usual; given by climate, read by materials and planting. */
  public static final FactKey<FrostDates> FROST =
      FactKey.one("climate.frost", FrostDates.class).called("frost dates");

  /** The plant hardiness zone; given by climate, read by planting. */
  public static final FactKey<Hardiness> HARDINESS =
      FactKey.one("climate.hardiness", Hardiness.class).called("hardiness zone");

  /** Winter chill of a usual year; given by climate, read by planting. */
  public static final FactKey<WinterChill> WINTER_CHILL =
      FactKey.one("climate.chill", WinterChill.class).called("winter chill");

  /** Things that cast shade; given by sun (from plan elements) and planting, read by sun. */
  public static final FactKey<Obstacle> OBSTACLES =
      FactKey.many("site.obstacles", Obstacle.class).called("things that cast shade");

  /** Direct sun by month and over the season; given by sun, read by planting. */
  public static final FactKey<SunHours> SUN_HOURS =
      FactKey.one("sun.hours", SunHours.class).called("hours of sun");

  /** Radiation above the air, under a clear sky and as given; given by climate, read by sun. */
  public static final FactKey<SolarRadiation> RADIATION =
      FactKey.one("sun.radiation", SolarRadiation.class).called("radiation of the sun");

  /** Sun that plants ask for where they stand; given by planting, read by sun and planting. */
  public static final FactKey<LightNeed> LIGHT_NEEDS =
      FactKey.many("planting.light", LightNeed.class).called("light that plants ask for");

  /** Usual days of planting; given by planting, read by planting and materials. */
  public static final FactKey<PlantingWindow> PLANTING_WINDOWS =
      FactKey.many("planting.windows", PlantingWindow.class).called("days of planting");

  /** What stands where; given by planting, read by water, materials and painters. */
  public static final FactKey<Stand> STANDS =
      FactKey.many("planting.stands", Stand.class).called("plants");

  /** The harvest of a year at full bearing; given and read by planting, read by materials. */
  public static final FactKey<Harvest> HARVEST =
      FactKey.one("planting.harvest", Harvest.class).called("harvest");

  /** Water a bed or tree needs by month; given by water, read by water and checks. */
  public static final FactKey<WaterDemand> WATER_DEMAND =
      FactKey.many("water.demand", WaterDemand.class).called("water need");

  /** Water a source yields by month; given by water, read by water and checks. */
  public static final FactKey<WaterSupply> WATER_SUPPLY =
      FactKey.many("water.supply", WaterSupply.class).called("roof yield");

  /** Water that the lawn took; given by water, read by water and materials. */
  public static final FactKey<LawnWater> LAWN_WATER =
      FactKey.one("water.lawn", LawnWater.class).called("water against the lawn");

  /** The soil of the yard; given by materials, read by materials, water and planting. */
  public static final FactKey<SoilProfile> SOIL =
      FactKey.one("soil.profile", SoilProfile.class).called("soil");

  /** What differs by place; given by materials and regional files, read by tables and cautions. */
  public static final FactKey<LocalRule> LOCAL_RULES =
      FactKey.many("site.local-rules", LocalRule.class).called("local rules");

  /** What is to be found or bought; given by every plugin, read by tables. */
  public static final FactKey<BillLine> BILL =
      FactKey.many("bill.lines", BillLine.class).called("what to get");

  private YardFacts() {}
}
