package yardloom.planting.care.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WarmDayTest {
  /** March 7.4 °C, April 11.4 °C: 2.6 / 4 of the 31 days from 15 March are 20.15, so 5 April. */
  @Test
  void springDay_liesBetweenTheMiddlesOfItsMonths() {
    List<Double> means = List.of(4.9, 5.7, 7.4, 11.4, 13.2, 16.1, 18.8, 19.0, 16.5, 11.9, 7.9, 4.9);
    assertEquals(Optional.of(MonthDay.of(4, 5)), WarmDay.of(means));
  }

  @Test
  void whereNoMonthIsColderOrNoneWarm_thereIsNone() {
    assertEquals(Optional.empty(), WarmDay.of(Collections.nCopies(12, 14.0)));
    assertEquals(Optional.empty(), WarmDay.of(Collections.nCopies(12, 3.0)));
  }

  /**
   * 17 September is 59 days before 15 November, a day too late for this season: the next has it.
   */
  @Test
  void whatIsPlantedWithinTwoMonthsOfFrost_growsFromTheNextSeasonOn() {
    MonthDay last = MonthDay.of(3, 20);
    MonthDay first = MonthDay.of(11, 15);
    assertEquals(2027, Season.firstOf(LocalDate.of(2027, 9, 16), last, first).year());
    assertEquals(2028, Season.firstOf(LocalDate.of(2027, 9, 17), last, first).year());
  }

  /** Two of ten days in January, eight in February. */
  @Test
  void sharesOfMonths_areTheirDays() {
    double[] shares = MonthShares.of(LocalDate.of(2027, 1, 30), LocalDate.of(2027, 2, 8));
    assertEquals(0.2, shares[0], 1e-12);
    assertEquals(0.8, shares[1], 1e-12);
  }
}
