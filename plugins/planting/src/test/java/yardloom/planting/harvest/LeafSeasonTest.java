package yardloom.planting.harvest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.MonthDay;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.fact.Derived;
import yardloom.kernel.problem.SourceRef;
import yardloom.planting.catalogue.PlantCatalogue;
import yardloom.planting.year.GrowingYear;

/** How long leaves are picked, counted from the last frost. */
class LeafSeasonTest {
  /**
   * Rosemary begins 30 days before the last frost and ends 68 after the first. From 18 March to 5
   * December are 262 days: to day 330, 360 after the first, no rest. To 10 November are 237: to day
   * 305, 335 after the first, a rest of 30, which is none. One day less leaves 31, and stays.
   */
  @ParameterizedTest
  @CsvSource({"12, 5, 334", "11, 10, 334", "11, 9, 304"})
  void leaves_areNotLeftForLessThanAMonth(int month, int day, int until) {
    GrowingYear year =
        new GrowingYear(
            Derived.given(MonthDay.of(3, 18), "last", SourceRef.NONE),
            Derived.given(MonthDay.of(month, day), "first", SourceRef.NONE),
            true,
            Optional.empty());
    HarvestSeason season =
        HarvestSeason.of(PlantCatalogue.shipped().plant("rosemary"), year, Optional.empty())
            .orElseThrow();
    assertEquals(-30, season.from());
    assertEquals(until, season.until());
  }
}
