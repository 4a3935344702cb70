package yardloom.planting.own;

import java.util.function.Consumer;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.scope.Making;
import yardloom.kernel.scope.OwnTable;
import yardloom.kernel.scope.PlanScope;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.vocab.Arg;
import yardloom.kernel.vocab.Opt;
import yardloom.kernel.vocab.Verb;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;

/** The words for plants that the catalogue lacks or has otherwise. */
public final class OwnPlantWords {
  private static final String AS_LIKE = "as the plant it is like";

  private OwnPlantWords() {}

  @Verb(
      help =
          "Gives a plant of your own, or one of the catalogue as it grows with you. What its block"
              + " does not say is taken from the plant that it is like, and marked as unverified.",
      example =
          "ownPlant('fig-leaf gourd', like: 'winter squash', botanical: 'Cucurbita ficifolia',"
              + " source: publication('Trial', by: 'our own garden', seen: 'read'))"
              + " { grown spread: 8.ft ; yields low: 10.lb, high: 40.lb }")
  public static void ownPlant(
      PlanScope plan,
      @Arg(name = "name", help = "what plans call it") String name,
      @Opt(
              name = "like",
              help = "the plant of the catalogue that it grows and is planted like",
              required = true)
          String like,
      @Opt(name = "source", help = "as `publication` names it", required = true) Source source,
      @Opt(name = "botanical", help = "botanical name", fallback = AS_LIKE) String botanical,
      @Opt(name = "family", help = "botanical family", fallback = AS_LIKE) String family,
      Consumer<OwnPlantScope> block) {
    OwnPlantScope.Said said = new OwnPlantScope.Said();
    OwnPlantScope row = new OwnPlantScope(said, plan.place());
    row.says("plant", name.strip());
    row.says("like", like);
    row.says("botanical", botanical);
    row.says("family", family);
    if (block != null) {
      block.accept(row);
    }
    add(plan, said.row(plan.place()), source);
  }

  @Verb(
      help = "Gives the room that an own plant needs and how large it grows.",
      example = "grown spacing: 3.ft, rows: 4.ft, spread: 5.ft, height: 6.ft")
  public static void grown(
      OwnPlantScope row,
      @Opt(name = "spacing", help = "neighbours in a row", fallback = AS_LIKE) Length spacing,
      @Opt(name = "rows", help = "distance of rows", fallback = AS_LIKE) Length rows,
      @Opt(name = "spread", help = "width when grown", fallback = AS_LIKE) Length spread,
      @Opt(name = "height", help = "height when grown", fallback = AS_LIKE) Length height,
      @Opt(name = "layer", help = "'canopy', 'shrub', 'herb', 'cover' …", fallback = AS_LIKE)
          String layer) {
    row.says("spacing_in", spacing, Length::inches);
    row.says("rows_in", rows, Length::inches);
    row.says("spread_in", spread, Length::inches);
    row.says("height_in", height, Length::inches);
    row.says("layer", layer);
  }

  @Verb(
      help = "Gives what an own plant asks of light, soil, water and climate.",
      example = "needs light: 'full sun', lowPh: 6.0, highPh: 7.5, water: 'low', zone: 5")
  public static void needs(
      OwnPlantScope row,
      @Opt(name = "light", help = "'full sun', 'sun or part shade' …", fallback = AS_LIKE)
          String light,
      @Opt(name = "leastLight", help = "fewest hours of sun a day", fallback = AS_LIKE)
          Number leastLight,
      @Opt(name = "lowPh", help = "most acid soil of its best", fallback = AS_LIKE) Number lowPh,
      @Opt(name = "highPh", help = "most alkaline soil of its best", fallback = AS_LIKE)
          Number highPh,
      @Opt(name = "drainage", help = "'good', 'any', 'moist', 'wet'", fallback = AS_LIKE)
          String drainage,
      @Opt(name = "water", help = "'low', 'medium', 'high'", fallback = AS_LIKE) String water,
      @Opt(name = "zone", help = "coldest hardiness zone", fallback = AS_LIKE) Number zone,
      @Opt(name = "chill", help = "hours of chill", fallback = AS_LIKE) Number chill,
      @Opt(name = "heat", help = "mean day of the hottest month that harms it", fallback = AS_LIKE)
          Temperature heat) {
    row.says("light", light);
    row.says("least_light_h", leastLight);
    row.says("ph_low", lowPh);
    row.says("ph_high", highPh);
    row.says("drainage", drainage);
    row.says("water", water);
    row.says("zone", zone);
    row.says("chill_h", chill);
    row.says("heat_c", heat, Temperature::celsius);
  }

  @Verb(
      help =
          "Gives when an own plant is planted, blooms and is picked, in days after the last frost.",
      example = "seasons bloomFrom: 20, bloomUntil: 35, pickFrom: 90, pickUntil: 120")
  public static void seasons(
      OwnPlantScope row,
      @Opt(name = "window", help = "group of planting times", fallback = AS_LIKE) String window,
      @Opt(name = "bloomFrom", help = "days after the last frost", fallback = AS_LIKE)
          Number bloomFrom,
      @Opt(name = "bloomUntil", help = "days after the last frost", fallback = AS_LIKE)
          Number bloomUntil,
      @Opt(name = "pickFrom", help = "days after the last frost", fallback = AS_LIKE)
          Number pickFrom,
      @Opt(name = "pickUntil", help = "days after the last frost", fallback = AS_LIKE)
          Number pickUntil) {
    row.says("window", window);
    row.says("bloom_from", bloomFrom);
    row.says("bloom_until", bloomUntil);
    row.says("pick_from", pickFrom);
    row.says("pick_until", pickUntil);
  }

  @Verb(
      help = "Gives what an own plant bears in a year, and from which year on.",
      example = "yields low: 10.lb, high: 40.lb, per: 'plant', firstYear: 3, fullYear: 6")
  public static void yields(
      OwnPlantScope row,
      @Opt(name = "low", help = "a year's least, full grown", fallback = AS_LIKE) Mass low,
      @Opt(name = "high", help = "a year's most, full grown", fallback = AS_LIKE) Mass high,
      @Opt(name = "per", help = "'plant', 'row foot', 'square foot'", fallback = "plant")
          String per,
      @Opt(name = "firstYear", help = "year of the first harvest", fallback = AS_LIKE)
          Number firstYear,
      @Opt(name = "fullYear", help = "year of the first full harvest", fallback = "the first")
          Number fullYear) {
    row.says("yield_low_kg", low, Mass::kilograms);
    row.says("yield_high_kg", high, Mass::kilograms);
    row.says("yield_per", per);
    row.says("first_year", firstYear);
    row.says("full_year", fullYear);
  }

  @Verb(
      help = "Gives what an own plant needs to be pollinated.",
      example = "pollinated 'partner', group: 'pear', within: 80.ft")
  public static void pollinated(
      OwnPlantScope row,
      @Arg(name = "by", help = "'none', 'self', 'helps', 'partner', 'male and female'") String by,
      @Opt(name = "group", help = "group of kinds that pollinate it", fallback = AS_LIKE)
          String group,
      @Opt(name = "within", help = "how near a partner stands", fallback = AS_LIKE) Length within) {
    row.says("pollination", by);
    row.says("partner_group", group);
    row.says("within_ft", within, Length::feet);
  }

  @Verb(
      help = "Gives what an own plant does in the yard, and what is to be minded of it.",
      example = "traits roles: 'insect plant, mulch maker', harms: 'pets', caution: 'pips bitter'")
  public static void traits(
      OwnPlantScope row,
      @Opt(name = "roles", help = "such as 'insect plant, mulch maker'", fallback = AS_LIKE)
          String roles,
      @Opt(name = "nativeTo", help = "region", fallback = AS_LIKE) String nativeTo,
      @Opt(name = "harms", help = "'children', 'pets' or both", fallback = AS_LIKE) String harms,
      @Opt(name = "caution", help = "what is to be minded", fallback = AS_LIKE) String caution,
      @Opt(name = "mulch", help = "'woody', 'spreading', 'low', 'annual'", fallback = AS_LIKE)
          String mulch,
      @Opt(name = "life", help = "'annual' or 'perennial'", fallback = AS_LIKE) String life,
      @Opt(
              name = "crop",
              help = "whose water use and roots it has in FAO-56, such as 'lettuce'",
              fallback = AS_LIKE)
          String crop) {
    row.says("roles", roles);
    row.says("native", nativeTo);
    row.says("harms", harms);
    row.says("caution", caution);
    row.says("mulch", mulch);
    row.says("life", life);
    row.says("crop", crop);
  }

  @Verb(
      help =
          "Takes plants of your own from a table: columns plant and like, and any of those of"
              + " `ownPlant`, such as spread_in or spread_cm, zone, ph_low, pick_from,"
              + " yield_high_lb, and of a source.",
      example = "plantBook('plant,like,spread_in,zone\\nperry pear,European pear,240,5')")
  public static void plantBook(
      PlanScope plan,
      @Arg(name = "csv", help = "the table, as from fileText('plants.csv')") String csv,
      @Opt(name = "name", help = "the file's name, for messages", fallback = "plant book")
          String name) {
    OwnTable table = OwnTable.of(plan, csv, name, "plant book");
    table.each(
        OwnPlant.NEEDED, OwnPlant.COLUMNS, row -> add(plan, row, row.sourceOr(table.source())));
  }

  private static void add(PlanScope plan, DataRow row, Source source) {
    SourceRef place = plan.place();
    Plant like;
    try {
      like = PlantCatalogue.of(plan.draft().attributes()).plant(row.text("like"));
    } catch (PlanException e) {
      throw e.at(row.placeOf("like"));
    }
    Plant own = OwnPlant.read(row, like, source);
    Making.name("plant", own.name());
    Making.once(
        plan,
        row.placeOf("plant"),
        PlantCatalogue.OWN,
        p -> p.name().equalsIgnoreCase(own.name()),
        "the plant '" + own.name() + "'");
    plan.draft().attributes().add(PlantCatalogue.OWN, own, place);
  }
}
