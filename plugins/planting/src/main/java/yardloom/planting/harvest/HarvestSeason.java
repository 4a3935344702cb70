package yardloom.planting.harvest;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.planting.catalogue.PlantCatalogue;

/**
 * The days in which a kind is picked, counted from the last frost of spring, both ends included. A
 * season may run on into the next year: citrus is picked in winter.
 *
 * <p>References: as the rows say; most are recalled.
 *
 * @param from the first day; negative before the last frost
 * @param until the last day, less than a year after the first
 */
public record HarvestSeason(int from, int until, Source source) {
  /** Any year without a leap day. */
  private static final int YEAR = 2021;

  private static final int DAYS = 365;
  private static final Map<String, HarvestSeason> SHIPPED =
      PlantCatalogue.byPlant(HarvestSeason.class, "seasons.csv", HarvestSeason::read);

  public HarvestSeason {
    if (until < from || until - from >= DAYS) {
      throw new IllegalArgumentException("a season from day " + from + " to " + until);
    }
  }

  /** By catalogue name; none for what is grown for its shade, flowers or roots in the ground. */
  public static Optional<HarvestSeason> of(String plant) {
    return Optional.ofNullable(SHIPPED.get(plant));
  }

  /** The share of the harvest in each month, January to December; day by day alike, 1 in all. */
  public List<Double> shares(MonthDay lastFrost) {
    int[] days = new int[12];
    LocalDate frost = lastFrost.atYear(YEAR);
    for (int day = from; day <= until; day++) {
      days[frost.plusDays(day).getMonthValue() - 1]++;
    }
    List<Double> shares = new ArrayList<>();
    for (int month : days) {
      shares.add(month / (double) (until - from + 1));
    }
    return List.copyOf(shares);
  }

  private static HarvestSeason read(DataRow row) {
    return new HarvestSeason(
        (int) row.number("from_days"),
        (int) row.number("until_days"),
        PlantCatalogue.sources().cited(row, "source"));
  }
}
