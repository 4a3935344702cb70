package yardloom.planting.window.formula;

import java.time.MonthDay;
import java.util.Optional;
import yardloom.kernel.source.Source;
import yardloom.planting.catalogue.Plant;

/**
 * When a kind of plant is set out, from the usual frost dates.
 *
 * <p>Tender annuals two weeks after the last frost of spring; hardy annuals from four weeks before
 * it, and again until ten weeks before the first frost of fall; perennials, shrubs and trees from
 * six weeks before the last frost until leaf, or in fall until six weeks before the first frost.
 * Works on either side of the equator.
 *
 * <p>References: common practice, no source; the six weeks before frost give roots time to take.
 */
public final class PlantingTime {
  /** Printed beside the results. */
  public static final Source SOURCE =
      Source.commonPractice(
          "tender plants two weeks after the last frost, hardy annuals four weeks before it,"
              + " perennials and woody plants six weeks before it or until six weeks before the"
              + " first");

  private static final int YEAR = 2021;
  private static final int TENDER_AFTER = 14;
  private static final int HARDY_BEFORE = 28;
  private static final int HARDY_FALL = 70;
  private static final int WOODY_BEFORE = 42;

  private PlantingTime() {}

  /**
   * The usual days.
   *
   * @param fallUntil last day of the year's second time, where there is one
   */
  public record Times(MonthDay springFrom, Optional<MonthDay> fallUntil) {}

  public static Times of(Plant.Season season, MonthDay lastFrost, MonthDay firstFrost) {
    return switch (season) {
      case TENDER_ANNUAL -> new Times(days(lastFrost, TENDER_AFTER), Optional.empty());
      case ANNUAL ->
          new Times(days(lastFrost, -HARDY_BEFORE), Optional.of(days(firstFrost, -HARDY_FALL)));
      case DECIDUOUS, EVERGREEN ->
          new Times(days(lastFrost, -WOODY_BEFORE), Optional.of(days(firstFrost, -WOODY_BEFORE)));
    };
  }

  private static MonthDay days(MonthDay from, int days) {
    return MonthDay.from(from.atYear(YEAR).plusDays(days));
  }
}
