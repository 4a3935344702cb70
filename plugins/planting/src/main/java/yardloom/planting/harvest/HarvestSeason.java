package yardloom.planting.harvest;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.source.Source;
import yardloom.kernel.table.DataRow;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.traits.ChillNeeds;
import yardloom.planting.traits.Growth;
import yardloom.planting.turn.Turn;
import yardloom.planting.year.BloomDelay;
import yardloom.planting.year.GrowingYear;
import yardloom.planting.year.RipeningDelay;

/**
 * The days in which a kind is picked, counted from the last frost of spring, both ends included. A
 * season may run on into the next year: citrus is picked in winter.
 *
 * <p>Leaves are picked for as long as they grow: the end of their season is that of the growing
 * year, as far before or after its first frost as where the days of the table were written down.
 * Roots that stay in the ground until leaves die have their whole season there.
 *
 * <p>References: as the rows say; most are recalled.
 *
 * @param from the first day; negative before the last frost
 * @param until the last day, less than a year after the first
 * @param ends which of both lies at the end of the growing year; it then is that of a growing year
 *     of {@link #USUAL_DAYS}
 * @param isHere whether the days are those of the yard already, as a plan gives them for a plant of
 *     its own
 */
public record HarvestSeason(int from, int until, Ends ends, Source source, boolean isHere) {
  /** Any year without a leap day. */
  private static final int YEAR = 2021;

  private static final int DAYS = 365;
  private static final int SHORT_REST = 30;

  /** From the last frost to the first where the days were written down: Urbana, Illinois. */
  static final int USUAL_DAYS = 172;

  private static final Temperature HOT = Temperature.fahrenheit(90);
  private static final Map<String, HarvestSeason> SHIPPED =
      PlantCatalogue.byPlant(HarvestSeason.class, "seasons.csv", HarvestSeason::read);

  public HarvestSeason {
    if (until < from || until - from >= DAYS) {
      throw new IllegalArgumentException("a season from day " + from + " to " + until);
    }
  }

  /** A season in the yard itself, whose days are all counted from the last frost. */
  public static HarvestSeason here(int from, int until, Source source) {
    return new HarvestSeason(from, until, Ends.NEITHER, source, true);
  }

  /** What is counted from the first frost of fall. */
  public enum Ends {
    NEITHER,
    /** The last day: leaves are picked while they grow. */
    LAST_DAY,
    /** Both days: roots are dug when leaves have died. */
    BOTH
  }

  /** The same days by somebody else's word. */
  public HarvestSeason by(Source other) {
    return new HarvestSeason(from, until, ends, other, isHere);
  }

  /** How many days it has. */
  public int days() {
    return until - from + 1;
  }

  /** Whether it has no beginning and no end. */
  public boolean isAllYear() {
    return days() == DAYS;
  }

  /** By catalogue name; none for what is grown for its shade, flowers or roots in the ground. */
  public static Optional<HarvestSeason> of(Plant plant) {
    return plant.trait(HarvestSeason.class, SHIPPED);
  }

  /**
   * The same where a yard lies: what ripens on lasting plants waits for its bloom, what rests in
   * winter for the warmth of a cool summer, what is tender for warm ground, leaves are picked to
   * the end of the growing year, and what frost kills until it. Days that a plan gives for a plant
   * of its own stay.
   */
  public static Optional<HarvestSeason> of(
      Plant plant, GrowingYear year, Optional<ClimateNormals> climate) {
    return of(plant).map(s -> s.isHere ? s : s.in(plant, year, climate));
  }

  private HarvestSeason in(Plant plant, GrowingYear year, Optional<ClimateNormals> climate) {
    List<String> roles = Growth.roles(plant);
    boolean ripens = roles.contains("fruit") || roles.contains("nut");
    HarvestSeason season = planted(plant, year).grown(year);
    if (year.kills(plant)) {
      return season.before(year);
    }
    boolean waits = ripens && !plant.growth().season().isAnnual();
    return waits
        ? season.later(year.begins().value(), climate, ChillNeeds.of(plant).isPresent())
        : season;
  }

  /** The same of what waits for warm ground before it is planted. */
  public HarvestSeason planted(Plant plant, GrowingYear year) {
    int later = isHere ? 0 : year.waits(plant);
    int last = ends == Ends.LAST_DAY ? Math.max(from + later, until) : until + later;
    return new HarvestSeason(from + later, last, ends, source, isHere);
  }

  /**
   * The same of one planting.
   *
   * @param turn its days, if its ground carries several crops in a year: it is picked in them, or
   *     not at all
   */
  public static Optional<HarvestSeason> of(
      Plant plant, GrowingYear year, Optional<ClimateNormals> climate, Optional<Turn> turn) {
    Optional<HarvestSeason> usual = of(plant, year, climate);
    return turn.isEmpty()
        ? usual
        : usual.flatMap(s -> turn.get().picked().map(days -> s.on(year.begins().value(), days)));
  }

  /** The same in a growing year of another length; of one day at least, a year less one at most. */
  private HarvestSeason grown(GrowingYear year) {
    int longer = year.days() - USUAL_DAYS;
    return switch (ends) {
      case NEITHER -> this;
      case LAST_DAY -> to(from, leavesUntil(until + longer));
      case BOTH -> to(from + longer, until + longer);
    };
  }

  /** Leaves that would be left alone for less than a month are picked all the year. */
  private int leavesUntil(int last) {
    return last - from >= DAYS - SHORT_REST ? from + DAYS - 1 : Math.max(from, last);
  }

  /** The same as far as the first frost of fall; of one day at least. */
  private HarvestSeason before(GrowingYear year) {
    return to(from, Math.max(from, Math.min(until, year.days())));
  }

  private HarvestSeason later(MonthDay begins, Optional<ClimateNormals> climate, boolean rests) {
    int bloom = BloomDelay.days(begins, climate);
    int first = rests ? RipeningDelay.days(begins, from, climate) : 0;
    int last = rests ? RipeningDelay.days(begins, until, climate) : 0;
    return to(from + bloom + first, until + bloom + last);
  }

  /** The same on the days of a turn, which are of {@link #YEAR} or the year after. */
  private HarvestSeason on(MonthDay lastFrost, Turn.Picked days) {
    long frost = lastFrost.atYear(YEAR).toEpochDay();
    return to((int) (days.from().toEpochDay() - frost), (int) (days.until().toEpochDay() - frost));
  }

  /**
   * The share of the harvest in each month, January to December; day by day alike, 1 in all.
   *
   * @param rests months in which nothing is picked; all 0 if that is the whole season
   */
  public List<Double> shares(MonthDay lastFrost, Set<Month> rests) {
    int[] days = new int[12];
    int all = 0;
    LocalDate frost = lastFrost.atYear(YEAR);
    for (int day = from; day <= until; day++) {
      Month month = frost.plusDays(day).getMonth();
      if (!rests.contains(month)) {
        days[month.getValue() - 1]++;
        all++;
      }
    }
    List<Double> shares = new ArrayList<>();
    for (int month : days) {
      shares.add(all == 0 ? 0.0 : month / (double) all);
    }
    return List.copyOf(shares);
  }

  /**
   * The months in which a kind bolts or stands still: cool-season annuals where the days reach 90
   * °F (32 °C) on the mean. They grow at 60 to 80 °F (page on cool-season vegetables, read); the
   * limit, from which none is picked, is recalled.
   */
  public static Set<Month> rests(Plant plant, Optional<ClimateNormals> climate) {
    Set<Month> rests = EnumSet.noneOf(Month.class);
    if (climate.isPresent() && plant.growth().season() == Plant.Season.ANNUAL) {
      for (Month month : Month.values()) {
        climate
            .get()
            .months()
            .get(month.getValue() - 1)
            .dailyMax()
            .filter(day -> day.compareTo(HOT) >= 0)
            .ifPresent(day -> rests.add(month));
      }
    }
    return rests;
  }

  private static HarvestSeason read(DataRow row) {
    boolean begins = row.text("from_frost").equals("first");
    boolean ends = row.text("until_frost").equals("first");
    return new HarvestSeason(
        (int) row.number("from_days") + (begins ? USUAL_DAYS : 0),
        (int) row.number("until_days") + (ends ? USUAL_DAYS : 0),
        begins ? Ends.BOTH : ends ? Ends.LAST_DAY : Ends.NEITHER,
        PlantCatalogue.sources().cited(row, "source"),
        false);
  }

  private HarvestSeason to(int first, int last) {
    return new HarvestSeason(first, last, Ends.NEITHER, source, isHere);
  }
}
