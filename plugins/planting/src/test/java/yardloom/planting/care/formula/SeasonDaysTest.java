package yardloom.planting.care.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.unit.Temperature;
import yardloom.planting.catalogue.Crop.Coefficients;
import yardloom.planting.catalogue.Plant;
import yardloom.planting.stand.formula.AnnualCurve;
import yardloom.planting.stand.formula.CropCurve;
import yardloom.planting.stand.formula.GrowingSeason;
import yardloom.planting.stand.formula.StageShares;

/** Seasons counted on a calendar. */
class SeasonDaysTest {
  private static final Season NORTH = Season.of(2027, MonthDay.of(3, 20), MonthDay.of(11, 15));

  /** 120 days before 20 March are 20 November of the year before. */
  @ParameterizedTest
  @CsvSource({
    "11-20, 2026-11-20",
    "12-01, 2026-12-01",
    "01-05, 2027-01-05",
    "11-19, 2027-11-19",
    "03-20, 2027-03-20"
  })
  void dates_lieFromTheWinterBeforeOn(String day, LocalDate expected) {
    assertEquals(expected, NORTH.on(MonthDay.parse("--" + day)));
  }

  @Test
  void days_areCountedFromTheLastFrost() {
    assertEquals(LocalDate.of(2027, 3, 30), NORTH.day(10));
    assertEquals(LocalDate.of(2027, 3, 6), NORTH.day(-14));
    assertEquals(LocalDate.of(2027, 11, 15), NORTH.firstFrost());
  }

  @Test
  void southernSeason_endsInTheNextYear() {
    Season south = Season.of(2027, MonthDay.of(9, 20), MonthDay.of(4, 30));
    assertEquals(LocalDate.of(2028, 4, 30), south.firstFrost());
  }

  /**
   * March has 4 °C, April 10: 15 April itself. With 6 and 12 °C four sixths of the 31 days from 15
   * March: 20.7, so 21 days, 5 April.
   */
  @Test
  void warmDay_liesBetweenTheMiddlesOfMonths() {
    assertEquals(Optional.of(MonthDay.of(4, 15)), WarmDay.of(year(4, 10)));
    assertEquals(Optional.of(MonthDay.of(4, 5)), WarmDay.of(year(6, 12)));
    assertEquals(Optional.empty(), WarmDay.of(java.util.Collections.nCopies(12, 10.0)));
  }

  private static List<Double> year(double march, double april) {
    return List.of(0.0, 2.0, march, april, 15.0, 18.0, 21.0, 20.0, 16.0, 11.0, 6.0, 1.0);
  }

  /** From 0.2 to 1.2 in even steps through June and July: 0.45 and 0.95 in the mean. */
  @Test
  void curve_isTheMeanOfItsMonths() {
    List<Double> months =
        CropCurve.monthly(
            new Coefficients(0.2, 1.2, 0.6),
            new StageShares(0, 1, 1),
            Plant.Season.TENDER_ANNUAL,
            List.of(5, 6));
    assertEquals(0.45, months.get(5), 1e-9);
    assertEquals(0.95, months.get(6), 1e-9);
    assertEquals(0, months.get(4));
  }

  /**
   * At 5 °C it grows: March and April, or September and October; of runs of one length the first
   * after the coldest month, here January.
   */
  @Test
  void season_countsMonthsAtTheLimit_andTakesTheFirstOfEqualRuns() {
    List<Temperature> means =
        Stream.of(-3.0, 0.0, 5.0, 5.0, 4.9, 4.0, 4.0, 4.0, 6.0, 7.0, 4.0, 1.0)
            .map(Temperature::celsius)
            .toList();
    assertEquals(List.of(2, 3), GrowingSeason.months(means, GrowingSeason.HARDY));
    // The same half a year later: the coldest month is July, and the fall comes first.
    List<Temperature> turned = new ArrayList<>(means.subList(6, 12));
    turned.addAll(means.subList(0, 6));
    assertEquals(List.of(8, 9), GrowingSeason.months(turned, GrowingSeason.HARDY));
  }

  /** A crop of a single day, and one of a whole year. */
  @Test
  void curveOfADay_andOfAYear_areTaken() {
    Coefficients kc = new Coefficients(0.9, 0.9, 0.9);
    StageShares shares = new StageShares(0, 0, 1);
    assertEquals(0.9 / 31, AnnualCurve.monthly(kc, shares, MonthDay.of(5, 9), 1).get(4), 1e-12);
    assertEquals(0.9, AnnualCurve.monthly(kc, shares, MonthDay.of(5, 9), 365).get(0), 1e-12);
    assertThrows(
        IllegalArgumentException.class,
        () -> AnnualCurve.monthly(kc, shares, MonthDay.of(5, 9), 0));
  }
}
