package yardloom.planting.year;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.facts.ClimateNormals;
import yardloom.kernel.source.Source;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Temperature;

/** Days from the last frost to bloom, by hand. */
class BloomDelayTest {
  private static Optional<ClimateNormals> climate(double... means) {
    List<ClimateNormals.Month> months = new ArrayList<>();
    for (double mean : means) {
      months.add(
          new ClimateNormals.Month(
              Length.inches(1), Temperature.celsius(mean), Optional.empty(), Optional.empty()));
    }
    return Optional.of(new ClimateNormals("x", months, Source.plan("x"), Source.plan("x")));
  }

  /**
   * From 8 °C in March to 11 in April the 10th degree is passed on 5 April; bloom on 15 April. That
   * is 120 days after 16 December, the most that it waits.
   */
  @ParameterizedTest(name = "{0}: {1} days")
  @CsvSource({
    "--03-15, 31",
    "--04-10, 5",
    "--04-15, 0",
    "--05-10, 0",
    "--12-16, 120",
    "--12-15, 0"
  })
  void bloom_waitsTenDaysAfterTheTenthDegree(String frost, int days) {
    assertEquals(
        days,
        BloomDelay.days(MonthDay.parse(frost), climate(5, 6, 8, 11, 14, 16, 19, 19, 16, 12, 8, 5)));
  }

  /**
   * South of the equator spring comes in September: 8 and 11 °C there, frost on 25 September: 20 of
   * 30 days after 15 September are 5 October, bloom on the 15th.
   */
  @Test
  void south_bloomsInItsOwnSpring() {
    Optional<ClimateNormals> south = climate(19, 19, 16, 12, 8, 5, 5, 6, 8, 11, 14, 16);
    assertEquals(20, BloomDelay.days(MonthDay.of(9, 25), south));
  }

  @Test
  void withoutColdMonths_orTemperatures_nothingWaits() {
    assertEquals(0, BloomDelay.days(MonthDay.of(2, 7), Optional.empty()));
    assertEquals(
        0,
        BloomDelay.days(
            MonthDay.of(2, 7), climate(13, 15, 18, 22, 27, 32, 35, 34, 31, 24, 17, 12)));
  }
}
