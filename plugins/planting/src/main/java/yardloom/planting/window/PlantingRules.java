package yardloom.planting.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.table.DataTable;
import yardloom.kernel.table.SourceTable;
import yardloom.planting.catalogue.Crop;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.window.formula.PlantingTime;
import yardloom.planting.window.formula.PlantingTime.Frost;
import yardloom.planting.window.formula.PlantingTime.Offset;

/**
 * The days of planting of each group of plants, in days from the usual frosts, as sources give
 * them. Summers are hot where the days of the hottest month pass 80 °F on the mean, which is where
 * cool-season vegetables stop growing; winters are frozen where the coldest month is below
 * freezing. Where frost is no rule of the year, days are counted from its warm part instead.
 */
final class PlantingRules {
  private static final SourceTable SOURCES = PlantCatalogue.sources();
  private static final DataTable TABLE = DataTable.shipped(PlantingRules.class, "windows.csv");

  /** Where the days of a crop are not known, and no rule asks for them. */
  private static final int UNKNOWN = 0;

  private PlantingRules() {}

  /** One row, for one kind. */
  record Rule(PlantingTime time, Source source) {}

  /**
   * What the climate is like.
   *
   * @param frostless whether frost is no rule of the year
   * @param drySummers whether rain falls in winter only
   */
  record Place(boolean hotSummers, boolean frozenWinters, boolean frostless, boolean drySummers) {
    /** Whether plants in pots are planted with the rains. */
    boolean plantsWithRain() {
      return frostless && drySummers;
    }
  }

  static List<Rule> of(Plant plant, Place place) {
    return of(plant, place, plant.draw().crop().stages().map(Crop.Stages::total).orElse(UNKNOWN));
  }

  static List<Rule> of(Plant plant, Place place, int cropDays) {
    List<Rule> rules = new ArrayList<>();
    for (DataRow row : TABLE.rows()) {
      if (row.text("group").equals(plant.growth().window()) && holds(row.text("when"), place)) {
        rules.add(
            new Rule(
                new PlantingTime(
                    row.text("how"), offset(row, "from", cropDays), offset(row, "until", cropDays)),
                SOURCES.cited(row, "source")));
      }
    }
    if (rules.isEmpty()) {
      throw new IllegalStateException(plant.name() + " has no days of planting");
    }
    return rules;
  }

  private static boolean holds(String when, Place place) {
    return switch (when) {
      case "always" -> true;
      case "hot summers" -> place.hotSummers();
      case "cool summers" -> !place.hotSummers() && !place.frostless();
      case "mild all year" -> !place.hotSummers() && place.frostless();
      case "winter rain" -> place.plantsWithRain();
      case "other rain" -> !place.plantsWithRain();
      case "frozen winters" -> place.frozenWinters();
      case "open winters" -> !place.frozenWinters();
      default -> throw new IllegalStateException("windows.csv has no \"" + when + "\"");
    };
  }

  private static Offset offset(DataRow row, String end, int cropDays) {
    Frost frost = Frost.valueOf(row.text(end + "_frost").toUpperCase(Locale.ROOT));
    boolean crop = row.text(end + "_days").equals("crop");
    // The last day on which the crop still ripens before the frost.
    if (crop && cropDays == UNKNOWN) {
      throw new IllegalStateException("windows.csv counts from crops without days");
    }
    int days = crop ? -cropDays : (int) row.number(end + "_days");
    return new Offset(frost, days);
  }
}
