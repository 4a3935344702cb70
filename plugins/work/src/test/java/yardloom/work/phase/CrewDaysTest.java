package yardloom.work.phase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yardloom.kernel.problem.SourceRef;
import yardloom.work.labour.WorkSettings;
import yardloom.work.labour.Workdays;

/** By hand for three people at 8 h a day, 24 in all; half an hour is a sixteenth of a day. */
class CrewDaysTest {
  private static CrewDays crew(int people, double hours) {
    WorkSettings none = WorkSettings.defaults();
    return new CrewDays(
        new WorkSettings(
            people,
            hours,
            0,
            WorkSettings.VISITS,
            none.start(),
            none.lastFrost(),
            none.firstFrost(),
            Workdays.ALL,
            SourceRef.NONE));
  }

  /**
   * At 2.25 six hours of the day are left; at 2.94 but 0.48, enough for 1.2 h of three people, not
   * for 1.8; at 2.93 there are 0.56. A truck is too late at 2.76.
   */
  @ParameterizedTest
  @CsvSource({
    "2, 30, true, 2",
    "2.25, 30, true, 2.25",
    "2.94, 1.2, false, 2.94",
    "2.94, 1.8, false, 3",
    "2.93, 1.8, false, 2.93",
    "2.76, 3, false, 2.76",
    "2.76, 3, true, 3",
    "2.75, 3, true, 2.75"
  })
  void begin(double free, double hours, boolean byTruck, double begins) {
    assertEquals(begins, crew(3, 8).begin(free, hours, byTruck), 1e-9);
  }

  /**
   * 18 h are 0.75 of a day. From 2.3 it ends at 3.05, 0.4 h into a day, so the evening before; from
   * 2.4 at 3.15. Three days of waiting for marks, and two more than the one that posts take, are
   * whole ones.
   */
  @ParameterizedTest
  @CsvSource({
    "2.1, 18, 0, 2.85",
    "2.3, 18, 0, 3",
    "2.4, 18, 0, 3.15",
    "0, 0.5, 3, 3",
    "0, 0, 3, 3",
    "2.4, 18, 3, 6",
    "2.1, 18, 3, 5",
    "2.1, 0.6, 0, 2.125"
  })
  void end(double begin, double hours, int leastDays, double ends) {
    assertEquals(ends, crew(3, 8).end(begin, hours, leastDays), 1e-9);
  }

  /**
   * Law: elapsed days hold the hours. One phase after the other, so long as none waits, takes no
   * less than its hours less half an hour, and no more than them and the rest of a day.
   */
  @Property(tries = 500, seed = "20261128")
  void daysHoldTheHours(
      @ForAll @DoubleRange(min = 0, max = 9.9) double free,
      @ForAll @DoubleRange(min = 0, max = 90) double hours,
      @ForAll boolean byTruck,
      @ForAll @IntRange(min = 1, max = 5) int people,
      @ForAll @IntRange(min = 2, max = 12) int aDay) {
    CrewDays crew = crew(people, aDay);
    double begins = crew.begin(free, hours, byTruck);
    double worked = crew.end(begins, hours, 0) - begins;
    assertTrue(begins >= free && begins - free < 0.25 + 1e-9 || begins - free <= 0.5 / aDay);
    assertTrue(worked <= crew.of(hours) + 1e-9);
    assertTrue(worked > crew.of(hours) - 0.5 / aDay - 1e-9);
  }
}
