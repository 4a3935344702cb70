package yardloom.climate.warm.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class WarmMonthsTest {
  /** Published normals of San Francisco, °F (Western Regional Climate Center). */
  private static final List<Double> SAN_FRANCISCO =
      Arrays.asList(51.1, 54.4, 54.9, 56.0, 56.6, 58.4, 59.1, 60.1, 62.3, 62.0, 57.2, 51.7);

  /**
   * From 54.9 in the middle of March to 56.0 a month on: 0.1 / 1.1 of 31 days, 2.8, so on the
   * third, 18 March. From 57.2 in the middle of November to 51.7: 2.2 / 5.5 of 30 days, 12: 27
   * November.
   */
  @Test
  void sanFrancisco_isWarmFromMarchToNovember() {
    WarmMonths.Stretch warm = WarmMonths.of(SAN_FRANCISCO, 55).orElseThrow();
    assertEquals(MonthDay.of(3, 18), warm.from().day());
    assertEquals(MonthDay.of(11, 27), warm.until().day());
  }

  /** Six months on, the same year in the south: 54.9 in September, 57.2 in May. */
  @Test
  void southernYear_runsAcrossNewYear() {
    List<Double> south = new ArrayList<>(SAN_FRANCISCO.subList(6, 12));
    south.addAll(SAN_FRANCISCO.subList(0, 6));
    WarmMonths.Stretch warm = WarmMonths.of(south, 55).orElseThrow();
    // 0.1 / 1.1 of the 30 days from the middle of September; 2.2 / 5.5 of the 31 from that of May.
    assertEquals(MonthDay.of(9, 18), warm.from().day());
    assertEquals(MonthDay.of(5, 27), warm.until().day());
  }

  @Test
  void neverWarmAndAlwaysWarm() {
    assertEquals(Optional.empty(), WarmMonths.of(SAN_FRANCISCO, 62.4));
    // January is the coldest: a month after and before its middle.
    WarmMonths.Stretch warm = WarmMonths.of(SAN_FRANCISCO, 51).orElseThrow();
    assertEquals(MonthDay.of(2, 15), warm.from().day());
    assertEquals(MonthDay.of(12, 15), warm.until().day());
  }

  /**
   * Law: a warmer year begins no later and ends no earlier; up to 3 °F it ends before the middle of
   * December.
   */
  @Property(tries = 50)
  void warmerYear_isNoShorter(@ForAll @IntRange(min = 0, max = 30) int tenths) {
    List<Double> warmer = SAN_FRANCISCO.stream().map(t -> t + tenths / 10.0).toList();
    WarmMonths.Stretch usual = WarmMonths.of(SAN_FRANCISCO, 55).orElseThrow();
    WarmMonths.Stretch found = WarmMonths.of(warmer, 55).orElseThrow();
    assertTrue(!found.from().day().isAfter(usual.from().day()), found.toString());
    assertTrue(!found.until().day().isBefore(usual.until().day()), found.toString());
  }
}
