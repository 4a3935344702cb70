package yardloom.sun.position;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yardloom.facts.Sunrises;
import yardloom.facts.YardFacts;
import yardloom.kernel.fact.FactGraph;
import yardloom.kernel.plan.Draft;
import yardloom.kernel.plan.PlanInfo;
import yardloom.kernel.plan.Site;
import yardloom.kernel.problem.SourceRef;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.UnitSystem;

class SunriseCalculatorTest {
  private static Sunrises at(double latitude, double longitude, String zone) {
    Draft draft = new Draft(new PlanInfo("t", "T", "", "", "", "", UnitSystem.US, "USD"));
    draft.site(
        new Site(
            "there",
            Angle.degrees(latitude),
            Angle.degrees(longitude),
            Length.metres(0),
            ZoneId.of(zone),
            Angle.ZERO),
        new SourceRef("s.groovy", 1, 1));
    return FactGraph.of(List.of(new SunriseCalculator()))
        .run(draft.freeze())
        .get(YardFacts.SUNRISES);
  }

  /**
   * NREL's worked example of the solar position algorithm: Golden, Colorado, 17 October, sunrise
   * 06:12:43 standard time, 07:12:43 by the clock. It rises about a minute later each day there, so
   * on the 1st about 16 minutes earlier; and by the clock an hour earlier than that in November,
   * when summer time has ended.
   */
  @Test
  void earliestOfOctober_inGolden_isThatOfTheFirst_bySummerTime() {
    Sunrises golden = at(39.742476, -105.1786, "America/Denver");
    LocalTime october = golden.earliest().get(9).orElseThrow();
    assertTrue(
        october.isBefore(LocalTime.of(7, 0)) && october.isAfter(LocalTime.of(6, 53)), "" + october);
    LocalTime november = golden.earliest().get(10).orElseThrow();
    assertTrue(
        november.isBefore(LocalTime.of(6, 32)) && november.isAfter(LocalTime.of(6, 24)),
        "" + november);
  }

  /**
   * Summer time begins on 8 March 2026 in Colorado: the earliest sunrise of the month by the clock
   * is that of the 7th, more than a minute before that of the 6th.
   */
  @Test
  void earliestOfMarch_isTheLastBeforeSummerTime() {
    CivilDay golden = new CivilDay(39.742476, -105.1786, CivilDay.Horizon.UPPER_LIMB);
    DayEvents seventh = golden.on(LocalDate.of(2026, 3, 7), ZoneId.of("America/Denver"));
    assertEquals(
        ((DayEvents.RiseAndSet) seventh).sunrise().toLocalTime(),
        at(39.742476, -105.1786, "America/Denver").earliest().get(2).orElseThrow());
  }

  /** At 75° N the sun stays below the horizon in December and does not set in June. */
  @Test
  void polarNightAndDay_haveNoSunrise() {
    Sunrises north = at(75, 0, "UTC");
    assertEquals(Optional.empty(), north.earliest().get(11));
    assertEquals(Optional.empty(), north.earliest().get(5));
    assertTrue(north.earliest().get(2).isPresent());
  }
}
