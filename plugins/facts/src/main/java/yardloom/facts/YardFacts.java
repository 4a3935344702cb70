package yardloom.facts;

import java.time.LocalDate;
import yardloom.facts.mulch.BorneDepth;
import yardloom.facts.mulch.BulkDensity;
import yardloom.facts.mulch.BulkLoads;
import yardloom.facts.mulch.Carry;
import yardloom.facts.mulch.Dripline;
import yardloom.facts.mulch.DropPile;
import yardloom.facts.mulch.Haul;
import yardloom.facts.mulch.ItemSource;
import yardloom.facts.mulch.MulchSurface;
import yardloom.facts.mulch.MulchTotals;
import yardloom.facts.mulch.SoilTop;
import yardloom.facts.mulch.TopUp;
import yardloom.facts.region.LocalRate;
import yardloom.facts.region.Region;
import yardloom.facts.work.DrawnThing;
import yardloom.facts.work.Job;
import yardloom.facts.work.PhaseDays;
import yardloom.facts.work.PlantedLater;
import yardloom.facts.work.PlantingDay;
import yardloom.facts.work.SiteContacts;
import yardloom.kernel.fact.FactKey;
import yardloom.kernel.plan.ElementId;

/** The facts that plugins share. A new one needs a giver and a reader in the same change. */
public final class YardFacts {
  /** Monthly climate at the site; given by climate, read by sun, planting and water. */
  public static final FactKey<ClimateNormals> CLIMATE =
      FactKey.one("climate.normals", ClimateNormals.class).called("climate");

  /** Evapotranspiration of short grass by month; given by climate, read by water. */
  public static final FactKey<ReferenceEt> REFERENCE_ET =
      FactKey.one("climate.reference-et", ReferenceEt.class).called("reference evapotranspiration");

  /** Evapotranspiration of short grass by the day; given by climate, read by water. */
  public static final FactKey<DailyEt> DAILY_ET =
      FactKey.one("climate.daily-et", DailyEt.class).called("reference evapotranspiration by day");

  /** Rain of every day of a year or more; given by climate, read by water. */
  public static final FactKey<DailyRain> DAILY_RAIN =
      FactKey.one("climate.daily-rain", DailyRain.class).called("rain by the day");

  /** When frost is usual; given by climate, read by work and planting. */
  public static final FactKey<FrostDates> FROST =
      FactKey.one("climate.frost", FrostDates.class).called("frost dates");

  /**
   * The warm part of a year without frost, where no frost dates are known; given by climate, read
   * by planting.
   */
  public static final FactKey<WarmSeason> WARM_SEASON =
      FactKey.one("climate.warm-season", WarmSeason.class).called("warm part of the year");

  /** Frost days said beside the climate; given by work, read by climate. */
  public static final FactKey<FrostSaid> FROST_SAID =
      FactKey.one("work.frost-said", FrostSaid.class).called("frost days said with the work");

  /** The first day of the work, if the plan says; given by work, read by planting. */
  public static final FactKey<LocalDate> WORK_START =
      FactKey.one("work.start", LocalDate.class).called("first day of the work");

  /** The plant hardiness zone; given by climate, read by planting. */
  public static final FactKey<Hardiness> HARDINESS =
      FactKey.one("climate.hardiness", Hardiness.class).called("hardiness zone");

  /** Whom to ask before digging; given by site, read by soil and work. */
  public static final FactKey<DigCall> DIG_CALL =
      FactKey.one("site.dig-call", DigCall.class).called("service that marks buried lines");

  /** Address and people to call; given by site, read by the materials sheet. */
  public static final FactKey<SiteContacts> SITE_CONTACTS =
      FactKey.one("site.contacts", SiteContacts.class).called("address and contacts");

  /** Paths and hard surfaces to carry along; given by site, read by the hauls. */
  public static final FactKey<Ways> WAYS =
      FactKey.one("site.ways", Ways.class).called("ways through the yard");

  /** Winter chill of a usual year; given by climate, read by planting. */
  public static final FactKey<WinterChill> WINTER_CHILL =
      FactKey.one("climate.chill", WinterChill.class).called("winter chill");

  /** Things that cast shade; given by sun (from plan elements) and planting, read by sun. */
  public static final FactKey<Obstacle> OBSTACLES =
      FactKey.many("site.obstacles", Obstacle.class).called("things that cast shade");

  /** Direct sun by month and over the season; given by sun, read by planting. */
  public static final FactKey<SunHours> SUN_HOURS =
      FactKey.one("sun.hours", SunHours.class).called("hours of sun");

  /** Earliest sunrise of each month; given by sun, read by water. */
  public static final FactKey<Sunrises> SUNRISES =
      FactKey.one("sun.sunrises", Sunrises.class).called("sunrise by month");

  /** Radiation above the air, under a clear sky and as given; given by climate, read by sun. */
  public static final FactKey<SolarRadiation> RADIATION =
      FactKey.one("sun.radiation", SolarRadiation.class).called("radiation of the sun");

  /** Sun that plants ask for where they stand; given by planting, read by sun and planting. */
  public static final FactKey<LightNeed> LIGHT_NEEDS =
      FactKey.many("planting.light", LightNeed.class).called("light that plants ask for");

  /** Usual days of planting; given by planting, read by planting and work. */
  public static final FactKey<PlantingWindow> PLANTING_WINDOWS =
      FactKey.many("planting.windows", PlantingWindow.class).called("days of planting");

  /**
   * Beds and trees of which kinds are planted in a later season than the work; given by planting,
   * read by materials.
   */
  public static final FactKey<PlantedLater> PLANTED_LATER =
      FactKey.many("planting.later", PlantedLater.class).called("beds planted later");

  /** Chips that the kinds of a bed bear; given by planting, read by materials. */
  public static final FactKey<BorneDepth> BORNE_DEPTHS =
      FactKey.many("planting.borne-depths", BorneDepth.class).called("depths of chips borne");

  /** What stands where; given by planting, read by water, materials, soil, work and painters. */
  public static final FactKey<Stand> STANDS =
      FactKey.many("planting.stands", Stand.class).called("plants");

  /** The harvest of a year at full bearing; given and read by planting, read by work. */
  public static final FactKey<Harvest> HARVEST =
      FactKey.one("planting.harvest", Harvest.class).called("harvest");

  /** Water that the lawn took; given by water, read by water and work. */
  public static final FactKey<LawnWater> LAWN_WATER =
      FactKey.one("water.lawn", LawnWater.class).called("water against the lawn");

  /** The soil of the yard; given by soil, read by materials, water and planting. */
  public static final FactKey<SoilProfile> SOIL =
      FactKey.one("soil.profile", SoilProfile.class).called("soil");

  /** The acidity of the soil by its test; given by soil, read by planting. */
  public static final FactKey<SoilAcidity> SOIL_ACIDITY =
      FactKey.one("soil.acidity", SoilAcidity.class).called("acidity of the soil");

  /** Beds that are watered together; given by water, read by planting. */
  public static final FactKey<WateringValve> WATERING_VALVES =
      FactKey.many("water.valves", WateringValve.class).called("beds by valve");

  /** The region that the yard lies in; given by soil, read by materials and work. */
  public static final FactKey<Region> REGION =
      FactKey.one("site.region", Region.class).called("region");

  /** The rules in force where the yard lies, by topic; given by soil, read by materials. */
  public static final FactKey<LocalRule> LOCAL_RULES =
      FactKey.many("site.local-rules", LocalRule.class).called("local rules");

  /** Rates that plan and region give; given by materials and work, read by soil. */
  public static final FactKey<LocalRate> LOCAL_RATES =
      FactKey.many("site.local-rates", LocalRate.class).called("local rates");

  /** The ground that receives layers, without overlaps; given by materials, read by soil, work. */
  public static final FactKey<MulchSurface> SURFACES =
      FactKey.many("materials.surfaces", MulchSurface.class).called("surfaces to cover");

  /** Soil of raised beds; given by sun, where it casts shade, read by materials. */
  public static final FactKey<SoilTop> SOIL_TOPS =
      FactKey.many("sun.soil-tops", SoilTop.class).called("soil of raised beds");

  /** Dripline by bed; given by water, read by materials (a layer of the stack) and planting. */
  public static final FactKey<Dripline> DRIPLINES =
      FactKey.many("water.driplines", Dripline.class).called("dripline in the beds");

  /** What the surfaces take together; given by materials, read by soil and work. */
  public static final FactKey<MulchTotals> MULCH_TOTALS =
      FactKey.one("materials.totals", MulchTotals.class).called("layers in all");

  /** What bulk material weighs; given by materials, read by soil. */
  public static final FactKey<BulkDensity> BULK_DENSITIES =
      FactKey.many("materials.densities", BulkDensity.class).called("bulk densities");

  /** Truckloads of bulk orders; given by materials, read by work. */
  public static final FactKey<BulkLoads> LOADS =
      FactKey.many("materials.loads", BulkLoads.class).called("truckloads").byPart();

  /** Rock, gravel, sand and soil to be wheeled; given by materials, read by work. */
  public static final FactKey<Carry> CARRIES =
      FactKey.many("materials.carries", Carry.class).called("bulk to be wheeled");

  /** Heaps on the drop zones of the plan; given by materials, read by work. */
  public static final FactKey<DropPile> PILES =
      FactKey.many("materials.piles", DropPile.class).called("delivered piles");

  /** Where things come from and how long that takes; given by materials, read by work. */
  public static final FactKey<ItemSource> SUPPLIES =
      FactKey.many("materials.supplies", ItemSource.class).called("sources of materials");

  /** Chips to add in the years after; given by materials, read by work. */
  public static final FactKey<TopUp> TOP_UPS =
      FactKey.many("materials.top-ups", TopUp.class).called("chips to add");

  /** Barrow trips from the heaps; given by work, read by materials' painter. */
  public static final FactKey<Haul> HAULS =
      FactKey.many("work.hauls", Haul.class).called("barrow ways").byPart();

  /** When the crew plants each kind; given by work, read by planting and water. */
  public static final FactKey<PlantingDay> PLANTING_DAYS =
      FactKey.many("work.planting-days", PlantingDay.class)
          .called("days on which the crew plants")
          .byPart();

  /**
   * When the crew works each phase, where the plan says its start; given by work, read by water.
   */
  public static final FactKey<PhaseDays> PHASE_DAYS =
      FactKey.many("work.phase-days", PhaseDays.class).called("days of the phases").byPart();

  /** What is to be done; given by every plugin, read by work. */
  public static final FactKey<Job> JOBS =
      FactKey.many("work.jobs", Job.class).called("what to do").byPart();

  /**
   * What is drawn beside the elements, and how it is counted; given by materials and water, read by
   * work.
   */
  public static final FactKey<DrawnThing> DRAWN =
      FactKey.many("work.drawn", DrawnThing.class).called("what is drawn beside elements").byPart();

  /**
   * Elements whose items and tasks are counted elsewhere; given by work for what the plan counts
   * itself and by planting for compost bays, read by materials.
   */
  public static final FactKey<ElementId> OWN_COUNTED =
      FactKey.many("work.own-counted", ElementId.class).called("elements that the plan counts");

  /** What is to be found or bought; given by every plugin, read by tables. */
  public static final FactKey<BillLine> BILL =
      FactKey.many("bill.lines", BillLine.class).called("what to get").byPart();

  private YardFacts() {}
}
