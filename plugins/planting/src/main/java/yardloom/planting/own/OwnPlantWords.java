package yardloom.planting.own;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
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
          "Gives a plant of your own, or one of the catalogue as it grows with you. What you do not say"
              + " is taken from the plant that it is like, and marked as unverified.",
      example =
          "ownPlant('fig-leaf gourd', like: 'winter squash', botanical: 'Cucurbita ficifolia',"
              + " spread: 8.ft, yieldLow: 10.lb, yieldHigh: 40.lb,"
              + " source: publication('Trial', by: 'our own garden', seen: 'read'))")
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
      @Opt(name = "spacing", help = "neighbours in a row", fallback = AS_LIKE) Length spacing,
      @Opt(name = "rows", help = "distance of rows", fallback = AS_LIKE) Length rows,
      @Opt(name = "spread", help = "width when grown", fallback = AS_LIKE) Length spread,
      @Opt(name = "height", help = "height when grown", fallback = AS_LIKE) Length height,
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
          Temperature heat,
      @Opt(name = "bloomFrom", help = "days after the last frost", fallback = AS_LIKE)
          Number bloomFrom,
      @Opt(name = "bloomUntil", help = "days after the last frost", fallback = AS_LIKE)
          Number bloomUntil,
      @Opt(name = "pickFrom", help = "days after the last frost", fallback = AS_LIKE)
          Number pickFrom,
      @Opt(name = "pickUntil", help = "days after the last frost", fallback = AS_LIKE)
          Number pickUntil,
      @Opt(name = "yieldLow", help = "a year's least, full grown", fallback = AS_LIKE)
          Mass yieldLow,
      @Opt(name = "yieldHigh", help = "a year's most, full grown", fallback = AS_LIKE)
          Mass yieldHigh,
      @Opt(name = "yieldPer", help = "'plant', 'row foot', 'square foot'", fallback = "plant")
          String yieldPer,
      @Opt(name = "firstYear", help = "year of the first harvest", fallback = AS_LIKE)
          Number firstYear,
      @Opt(name = "fullYear", help = "year of the first full harvest", fallback = "the first")
          Number fullYear,
      @Opt(
              name = "pollination",
              help = "'none', 'self', 'helps', 'partner', 'male and female'",
              fallback = AS_LIKE)
          String pollination,
      @Opt(name = "partners", help = "group of kinds that pollinate it", fallback = AS_LIKE)
          String partners,
      @Opt(name = "within", help = "how near a partner stands", fallback = AS_LIKE) Length within,
      @Opt(name = "roles", help = "such as 'insect plant, mulch maker'", fallback = AS_LIKE)
          String roles,
      @Opt(name = "nativeTo", help = "region", fallback = AS_LIKE) String nativeTo,
      @Opt(name = "harms", help = "'children', 'pets' or both", fallback = AS_LIKE) String harms,
      @Opt(name = "caution", help = "what is to be minded", fallback = AS_LIKE) String caution,
      @Opt(name = "window", help = "group of planting times", fallback = AS_LIKE) String window,
      @Opt(name = "mulch", help = "'woody', 'spreading', 'low', 'annual'", fallback = AS_LIKE)
          String mulch,
      @Opt(name = "layer", help = "'canopy', 'shrub', 'herb', 'cover' …", fallback = AS_LIKE)
          String layer) {
    Map<String, String> cells = new HashMap<>();
    put(cells, "plant", name.strip());
    put(cells, "like", like);
    put(cells, "botanical", botanical);
    put(cells, "family", family);
    put(cells, "spacing_in", spacing, Length::inches);
    put(cells, "rows_in", rows, Length::inches);
    put(cells, "spread_in", spread, Length::inches);
    put(cells, "height_in", height, Length::inches);
    put(cells, "light", light);
    put(cells, "least_light_h", leastLight);
    put(cells, "ph_low", lowPh);
    put(cells, "ph_high", highPh);
    put(cells, "drainage", drainage);
    put(cells, "water", water);
    put(cells, "zone", zone);
    put(cells, "chill_h", chill);
    put(cells, "heat_c", heat, Temperature::celsius);
    put(cells, "bloom_from", bloomFrom);
    put(cells, "bloom_until", bloomUntil);
    put(cells, "pick_from", pickFrom);
    put(cells, "pick_until", pickUntil);
    put(cells, "yield_low_kg", yieldLow, Mass::kilograms);
    put(cells, "yield_high_kg", yieldHigh, Mass::kilograms);
    put(cells, "yield_per", yieldPer);
    put(cells, "first_year", firstYear);
    put(cells, "full_year", fullYear);
    put(cells, "pollination", pollination);
    put(cells, "partner_group", partners);
    put(cells, "within_ft", within, Length::feet);
    put(cells, "roles", roles);
    put(cells, "native", nativeTo);
    put(cells, "harms", harms);
    put(cells, "caution", caution);
    put(cells, "window", window);
    put(cells, "mulch", mulch);
    put(cells, "layer", layer);
    add(plan, new DataRow(cells, plan.place(), Map.of()), source);
  }

  private static <T> void put(
      Map<String, String> cells, String column, T value, ToDoubleFunction<T> unit) {
    if (value != null) {
      cells.put(column, Double.toString(unit.applyAsDouble(value)));
    }
  }

  private static void put(Map<String, String> cells, String column, Object value) {
    if (value != null) {
      cells.put(column, value.toString());
    }
  }

  @Verb(
      help =
          "Takes plants of your own from a table: columns plant and like, and any of those of `ownPlant`,"
              + " such as spread_in or spread_cm, zone, ph_low, pick_from, yield_high_lb, and of a source.",
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
